/* Loaded before the C library: lets one call fail. FAULT is "call:errno:n:part of a path": the nth such
   call (and every later one) on a path that holds that part fails. No path part: every path. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

static int fails(const char *call, const char *path) {
    static atomic_int seen;
    char name[16] = "", part[64] = "";
    int number = 0, from = 1;
    const char *fault = getenv("FAULT");
    if (!fault || sscanf(fault, "%15[^:]:%d:%d:%63s", name, &number, &from, part) < 3) return 0;
    if (strcmp(name, call) != 0 || (part[0] && (!path || !strstr(path, part)))) return 0;
    if (atomic_fetch_add(&seen, 1) + 1 < from) return 0;
    errno = number;
    return 1;
}

static const char *path_of(int handle, char *buffer, size_t size) {
    char link[64];
    snprintf(link, sizeof link, "/proc/self/fd/%d", handle);
    ssize_t length = readlink(link, buffer, size - 1);
    buffer[length > 0 ? length : 0] = 0;
    return buffer;
}

#define REAL(type, name, ...) ((type(*)(__VA_ARGS__))dlsym(RTLD_NEXT, #name))

ssize_t write(int handle, const void *bytes, size_t size) {
    char path[4096];
    if (handle > 2 && fails("write", path_of(handle, path, sizeof path))) return -1;
    return REAL(ssize_t, write, int, const void *, size_t)(handle, bytes, size);
}
ssize_t read(int handle, void *bytes, size_t size) {
    char path[4096];
    if (handle > 2 && fails("read", path_of(handle, path, sizeof path))) return -1;
    return REAL(ssize_t, read, int, void *, size_t)(handle, bytes, size);
}
int fsync(int handle) {
    char path[4096];
    if (fails("fsync", path_of(handle, path, sizeof path))) return -1;
    return REAL(int, fsync, int)(handle);
}
int rename(const char *from, const char *to) {
    if (fails("rename", to)) return -1;
    return REAL(int, rename, const char *, const char *)(from, to);
}
int mkostemp(char *name, int flags) {
    if (fails("mkostemp", name)) return -1;
    return REAL(int, mkostemp, char *, int)(name, flags);
}
