// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/documents.hpp"
#include "app/paper/dxf.hpp"
#include "app/paper/output.hpp"
#include "app/shared/said.hpp"
#include "app/shared/words.hpp"

#include <QBuffer>
#include <QFile>
#include <QSaveFile>

#include <fmt/format.h>

#include <memory>
#include <system_error>

namespace fluewright {

namespace {

QString path_text(const std::filesystem::path& path) { return QString::fromStdU16String(path.u16string()); }

std::string_view bytes_of(const QByteArray& bytes) {
  return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

ViewKind kind_of(PaperView view) {
  switch (view) {
    case PaperView::plan:
      return ViewKind::plan;
    case PaperView::front:
      return ViewKind::front;
    case PaperView::side:
      return ViewKind::side;
    case PaperView::isometric:
      break;
  }
  return ViewKind::isometric;
}

QSizeF paper_size(PaperSize size) { return size == PaperSize::a4 ? QSizeF(210.0, 297.0) : QSizeF(215.9, 279.4); }

/// The view in the middle of a sheet of its own, lying where that gives a larger scale.
struct ViewSheet {
  paper::Sheet sheet;
  paper::DrawnView drawn;
};

ViewSheet view_sheet(const paper::Dossier& dossier, const ViewOptions& options) {
  constexpr double edge = 12.0;
  const QSizeF upright = paper_size(options.size);
  const QSizeF lying = upright.transposed();
  const QSizeF edges(2.0 * edge, 2.0 * edge);
  ViewSheet result;
  result.drawn = paper::fitted_view(dossier, kind_of(options.view), upright - edges);
  QSizeF size = upright;
  const paper::DrawnView turned = paper::fitted_view(dossier, kind_of(options.view), lying - edges);
  if (turned.scale.denominator < 0.9 * result.drawn.scale.denominator) {
    result.drawn = turned;
    size = lying;
  }
  const QRectF box = result.drawn.figure.bounds();
  result.sheet = {size.width(), size.height(), {}};
  result.sheet.content.put(result.drawn.figure, QPointF(0.5 * size.width(), 0.5 * size.height()) - box.center());
  return result;
}

/// As people's spreadsheets read it: quoted where it has to be.
std::string csv_cell(const std::string& text) {
  if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
  return quoted + '"';
}

std::string csv_length(const std::optional<Length>& length) {
  return length ? fmt::format("{:.1f}", in(*length, millimetre)) : std::string{};
}

const char* form_word(Section::Form form) {
  switch (form) {
    case Section::Form::circle:
      return "round";
    case Section::Form::rectangle:
      return "rectangular";
    case Section::Form::annulus:
      return "ring";
    case Section::Form::half_round:
      break;
  }
  return "half round";
}

}  // namespace

PaperFault write_file(const std::filesystem::path& path, std::string_view bytes) {
  std::error_code ignored;
  const bool special = std::filesystem::exists(path, ignored) && !std::filesystem::is_regular_file(path, ignored) &&
                       !std::filesystem::is_directory(path, ignored);
  // A pipe or a device is written into; nothing may take its place.
  const auto file = special ? std::unique_ptr<QFileDevice>(std::make_unique<QFile>(path_text(path)))
                            : std::unique_ptr<QFileDevice>(std::make_unique<QSaveFile>(path_text(path)));
  const auto fault = [&](const std::string& what) {
    return fmt::format("“{}” {}: {}.", path.string(), what, file->errorString().toStdString());
  };
  if (!file->open(QIODevice::WriteOnly | QIODevice::Unbuffered)) return fault(said("could not be opened for writing"));
  const auto size = static_cast<qint64>(bytes.size());
  if (file->write(bytes.data(), size) != size) return fault(said("could not be written"));
  if (auto* whole = dynamic_cast<QSaveFile*>(file.get()); whole != nullptr && !whole->commit())
    return fault(said("could not be written"));
  return std::nullopt;
}

PaperFault write_paper(const Design& design, const Library& library, const PaperOptions& options,
                       const std::filesystem::path& path) {
  const std::vector<paper::Sheet> sheets = paper::pages(design, library, options);
  const QByteArray pdf = paper::to_pdf(sheets, QString::fromStdString(design.title));
  if (pdf.isEmpty()) return said("The pages could not be made.");
  return write_file(path, bytes_of(pdf));
}

PaperFault write_view(const Design& design, const Library& library, const ViewOptions& options,
                      const std::filesystem::path& path) {
  paper::need_fonts();
  const paper::Dossier dossier(design, library, options.units);
  const ViewSheet view = view_sheet(dossier, options);
  const QString title = QString::fromStdString(design.title);
  const std::string suffix = path.extension().string();
  if (suffix == ".pdf") return write_file(path, bytes_of(paper::to_pdf({view.sheet}, title)));
  if (suffix == ".svg") return write_file(path, bytes_of(paper::to_svg(view.sheet, title)));
  if (suffix == ".png") {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    constexpr double dots_per_mm = 300.0 / 25.4;
    if (!paper::to_image(view.sheet, dots_per_mm).save(&buffer, "PNG")) return said("The picture could not be made.");
    return write_file(path, bytes_of(bytes));
  }
  if (suffix == ".dxf") {
    if (options.view == PaperView::isometric)
      return said("A DXF drawing is made of plan and elevations: choose one of those views.");
    return write_file(path, paper::to_dxf(view.drawn.figure, view.drawn.scale.denominator, {}));
  }
  return said("“{}” is no file a view is written to: .pdf, .svg, .png or .dxf.", path.filename().string());
}

std::string parts_csv(const Design& design, const Library& library) {
  const TracedPath path = trace_path(design, library);
  const std::vector<std::size_t> order = building_order(design, path);
  std::vector<std::size_t> number(design.pieces.size(), 0);
  for (std::size_t i = 0; i < order.size(); ++i) number[order[i]] = i + 1;
  std::string csv = "numbers,type,name,labels,quantity,section,size_1_mm,size_2_mm,length_mm,wall,wall_name\r\n";
  for (const PartLine& line : parts_list(design, library)) {
    std::string numbers;
    std::string labels;
    for (const std::size_t piece : line.pieces) {
      numbers += (numbers.empty() ? "" : " ") + std::to_string(number[piece]);
      const std::string& label = design.pieces[piece].label;
      if (!label.empty()) labels += (labels.empty() ? "" : "; ") + label;
    }
    const PieceType* type = library.piece_type(line.type);
    const Wall* wall = library.wall(line.wall);
    for (const Wall& own : design.walls) {
      if (own.id == line.wall) wall = &own;
    }
    const bool two = line.section.form() == Section::Form::rectangle || line.section.form() == Section::Form::annulus;
    const std::vector<std::string> cells{numbers,
                                         line.type,
                                         type != nullptr ? type->name : line.type,
                                         labels,
                                         std::to_string(line.pieces.size()),
                                         form_word(line.section.form()),
                                         csv_length(line.section.first_size()),
                                         two ? csv_length(line.section.second_size()) : "",
                                         csv_length(line.length),
                                         line.wall,
                                         wall != nullptr ? wall->name : ""};
    for (std::size_t i = 0; i < cells.size(); ++i) csv += (i == 0 ? "" : ",") + csv_cell(cells[i]);
    csv += "\r\n";
  }
  return csv;
}

}  // namespace fluewright
