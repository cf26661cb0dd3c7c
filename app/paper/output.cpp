// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/output.hpp"

#include "app/paper/paint.hpp"
#include "app/paper/type.hpp"

#include <QBuffer>
#include <QGuiApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include <unistd.h>

#include <cmath>
#include <filesystem>
#include <memory>
#include <system_error>

namespace fluewright::paper {

namespace {

constexpr double dots_per_inch = 25.4 * font_units;  // a dot is a hundredth of a millimetre

QPageLayout layout_of(const Sheet& sheet) {
  const QPageSize size(QSizeF(sheet.width, sheet.height), QPageSize::Millimeter, {}, QPageSize::ExactMatch);
  return {size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter};
}

}  // namespace

void need_fonts() {
  if (QCoreApplication::instance() != nullptr) return;
  // Qt wants a folder for what lasts as long as a login, and says so where a bare shell has none; nothing goes into it.
  if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR")) {
    const std::string folder =
        (std::filesystem::temp_directory_path() / ("fluewright-" + std::to_string(::getuid()))).string();
    std::error_code error;
    std::filesystem::create_directory(folder, error);
    std::filesystem::permissions(folder, std::filesystem::perms::owner_all, error);
    if (!error) qputenv("XDG_RUNTIME_DIR", QByteArray::fromStdString(folder));
  }
  static int count = 3;
  static char program[] = "fluewright";
  static char option[] = "-platform";
  static char platform[] = "offscreen";
  static char* arguments[] = {program, option, platform, nullptr};
  static const std::unique_ptr<QGuiApplication> application = std::make_unique<QGuiApplication>(count, arguments);
}

QByteArray to_pdf(const std::vector<Sheet>& sheets, const QString& title) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter writer(&buffer);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Fluewright"));
    writer.setResolution(static_cast<int>(std::lround(dots_per_inch)));
    QPainter painter;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
      writer.setPageLayout(layout_of(sheets[i]));
      if (i == 0) {
        painter.begin(&writer);
      } else {
        writer.newPage();
      }
      paint(painter, sheets[i].content);
    }
  }
  return bytes;
}

QByteArray to_svg(const Sheet& sheet, const QString& title) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&buffer);
  generator.setTitle(title);
  generator.setResolution(static_cast<int>(std::lround(dots_per_inch)));
  generator.setSize(QSize(static_cast<int>(std::lround(sheet.width * font_units)),
                          static_cast<int>(std::lround(sheet.height * font_units))));
  generator.setViewBox(QRectF(0.0, 0.0, sheet.width * font_units, sheet.height * font_units));
  QPainter painter(&generator);
  paint(painter, sheet.content);
  painter.end();
  return bytes;
}

void paint_page(QPainter& painter, const Sheet& sheet, const QRectF& into) {
  painter.save();
  painter.translate(into.topLeft());
  const double scale = into.width() / (sheet.width * font_units);
  painter.scale(scale, scale);
  paint(painter, sheet.content);
  painter.restore();
}

QImage to_image(const Sheet& sheet, double dots_per_mm) {
  QImage image(static_cast<int>(std::lround(sheet.width * dots_per_mm)),
               static_cast<int>(std::lround(sheet.height * dots_per_mm)), QImage::Format_RGB32);
  image.setDotsPerMeterX(static_cast<int>(std::lround(dots_per_mm * 1000.0)));
  image.setDotsPerMeterY(static_cast<int>(std::lround(dots_per_mm * 1000.0)));
  image.fill(Qt::white);
  QPainter painter(&image);
  paint_page(painter, sheet, QRectF(0.0, 0.0, image.width(), image.height()));
  return image;
}

}  // namespace fluewright::paper
