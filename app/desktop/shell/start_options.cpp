// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shell/start_options.hpp"

#include "app/desktop/language/language.hpp"
#include "app/desktop/shell/file_room.hpp"
#include "app/shared/log.hpp"

#include <spdlog/spdlog.h>
#include <CLI/CLI.hpp>

#include <QApplication>
#include <QPixmap>
#include <QTimer>

#include <iostream>
#include <iterator>

namespace fluewright {

StartOptions read_start_options(int argc, char** argv) {
  StartOptions options;
  std::string units;
  std::string sheet;
  CLI::App parser{"Fluewright: draw the flue path of a wood-fired mass heater and see whether it draws.", "fluewright"};
  parser.set_version_flag("--version", std::string("fluewright ") + FLUEWRIGHT_VERSION);
  auto* design = parser.add_option("design", options.design, "A design file to open");
  parser.add_option("--demo", options.demo, "A demo design to open, by its name (fluewright-cli demos lists them)")
      ->excludes(design);
  parser.add_option("--units", units, "metric or imperial")->check(CLI::IsMember({"metric", "imperial"}));
  std::vector<std::string> codes;
  for (const Language& language : languages) codes.emplace_back(language.code);
  parser.add_option("--language", options.language, "The language of this start: en, de or es")->check(CLI::IsMember(codes));
  parser.add_option("--theme", sheet, "light or dark")->check(CLI::IsMember({"light", "dark"}));
  parser
      .add_option("--log-level", options.log_level,
                  "What is logged on standard error: trace, debug, info, warn, error or off")
      ->check(CLI::IsMember(std::vector<std::string>(std::begin(log_levels), std::end(log_levels))))
      ->capture_default_str();
  parser.add_option("--picture", options.picture, "Put a picture of the window into this file (PNG) and leave");
  try {
    parser.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    constexpr int bad_input = 2;
    options.leave = parser.exit(error, std::cout, std::cerr) == 0 ? 0 : bad_input;
    return options;
  }
  if (!units.empty()) options.units = units == "imperial" ? UnitSystem::imperial : UnitSystem::metric;
  if (!sheet.empty()) options.sheet = sheet == "dark" ? Sheet::night : Sheet::day;
  return options;
}

void begin(MainWindow& window, const StartOptions& options) {
  // A picture is taken by a script: nobody is there to be asked.
  if (options.picture.empty() && window.files().offer_lost_work()) return;
  if (!options.demo.empty()) window.files().open_demo(QString::fromStdString(options.demo));
  if (!options.design.empty()) window.files().open_path(QString::fromStdString(options.design));
  if (options.picture.empty()) {
    if (options.demo.empty() && options.design.empty()) window.welcome();
    return;
  }
  // Not at once: layouts and the first fit of the drawing take a turn or two of the event loop.
  constexpr int settle_milliseconds = 400;
  QTimer::singleShot(settle_milliseconds, &window, [&window, file = QString::fromStdString(options.picture)] {
    const bool saved = window.grab().save(file, "PNG");
    if (!saved) spdlog::error("The picture could not be written to {}", file.toStdString());
    QApplication::exit(saved ? 0 : 1);
  });
}

}  // namespace fluewright
