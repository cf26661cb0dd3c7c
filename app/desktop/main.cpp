// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/language/language.hpp"
#include "app/desktop/shell/start_options.hpp"
#include "app/shared/log.hpp"

#include <QApplication>
#include <QTimer>

#include <spdlog/spdlog.h>

#include <iostream>

int main(int argc, char** argv) {
  using namespace fluewright;
  const StartOptions options = read_start_options(argc, argv);
  if (options.leave) return *options.leave;
  try {
    start_logging("fluewright", options.log_level);
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Fluewright"));
    QApplication::setApplicationVersion(QStringLiteral(FLUEWRIGHT_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("fluewright"));

    Memory memory;
    if (options.units) memory.set_units(*options.units);
    speak(application, language_code(options.language.empty() ? memory.choice(QStringLiteral("language"))
                                                              : QString::fromStdString(options.language)));
    const double percent = memory.choice(QStringLiteral("text_scale_percent")).toDouble();
    apply_theme(application, options.sheet.value_or(memory.sheet().value_or(sheet_of_system(application))),
                percent >= 100.0 && percent <= 200.0 ? 0.01 * percent : 1.0);
    Document document(spoken_library());
    MainWindow window(document, memory);
    window.show();
    // Once the window stands: a message about a bad file then has something to stand on.
    QTimer::singleShot(0, &window, [&] { begin(window, options); });
    return QApplication::exec();
  } catch (const std::exception& error) {
    spdlog::error("{}", error.what());
    std::cerr << "This should not have happened: " << error.what() << '\n';
  }
  return 1;
}
