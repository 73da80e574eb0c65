// Being told to stop: whole files or none.
#pragma once

namespace cli {

/// From here on SIGINT, SIGTERM and SIGHUP end the program as soon as no file is half written, with
/// 128 and the number of the signal. Those that were ignored before (nohup) stay ignored. Must be
/// called before there is a second thread.
void stop_cleanly();

} // namespace cli
