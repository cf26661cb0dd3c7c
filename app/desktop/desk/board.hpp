// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/path_measure.hpp"
#include "app/desktop/desk/tint.hpp"
#include "app/desktop/desk/tool.hpp"
#include "app/desktop/document.hpp"
#include "engine/layout/edit.hpp"

#include <QObject>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

namespace fluewright {

/// Ends of the path that can be drawn on from.
struct Ends {
  std::vector<OpenEnd> open;    ///< want a piece
  std::vector<OpenEnd> capped;  ///< shut, but could take one (a tee's branch)

  /// Open or capped; nothing if the port is neither.
  [[nodiscard]] const OpenEnd* find(const PortRef& ref) const;
};

/// What the three views share: the tool in hand, the end that would be grown, and with what.
class Board : public QObject {
  Q_OBJECT

 public:
  explicit Board(Document& document, QObject* parent = nullptr);
  ~Board() override;

  [[nodiscard]] Document& document() const { return document_; }
  [[nodiscard]] const PathMeasure& measure() const { return measure_; }
  [[nodiscard]] const Tint& tint() const { return tint_; }

  [[nodiscard]] const Ends& ends() const { return ends_; }
  /// The end that keys and the rack work on.
  [[nodiscard]] const std::optional<PortRef>& focused_end() const { return focused_end_; }
  void focus_end(std::optional<PortRef> end);
  /// The end under the mouse, lit up.
  [[nodiscard]] const std::optional<PortRef>& hovered_end() const { return hovered_end_; }
  void hover_end(std::optional<PortRef> end);

  /// Types that grow the path: level, upright (a chimney is no bench) and round a corner.
  [[nodiscard]] const std::string& run_type() const { return run_type_; }
  [[nodiscard]] const std::string& upright_type() const { return upright_type_; }
  [[nodiscard]] const std::string& type_towards(const Heading& heading) const;
  [[nodiscard]] const std::string& bend_type() const { return bend_type_; }
  void set_run_type(const std::string& type);
  void set_upright_type(const std::string& type);
  void set_bend_type(const std::string& type);
  /// The isometric view as single lines with symbols instead of bodies.
  [[nodiscard]] bool pipe_drawing() const { return pipe_drawing_; }
  void set_pipe_drawing(bool on);
  [[nodiscard]] std::vector<const PieceType*> run_types() const;
  [[nodiscard]] std::vector<const PieceType*> bend_types() const;

  [[nodiscard]] Tool& tool() { return *tool_; }
  void take_up(std::unique_ptr<Tool> tool);
  void put_down();  ///< back to the plain pointer
  void step_back(); ///< Escape
  /// Lets go of tools that handed over; views call it before they hand an event to the tool.
  void sweep() { retired_.clear(); }

  /// The result as a preview with its numbers, or the reason why not. Whether there was a design.
  bool preview(const EditResult& result);
  /// The result as an undoable step; what it touched becomes selected.
  bool commit(const EditResult& result, const QString& text, const QString& merge_key = {});

  /// What the status bar shows: a refusal or remark if there is one, else the tool's sentence.
  [[nodiscard]] QString sentence() const;
  void remark(const QString& remark);

  /// A straight run that a piece can be put into.
  [[nodiscard]] bool is_run(const PieceId& piece) const;

  /// Open ends of a design that is not on the desk yet, e.g. of an edit's result.
  [[nodiscard]] std::optional<OpenEnd> open_end_of(const Design& design, const PieceId& piece) const;

 signals:
  void redraw();           ///< pieces, numbers or colours changed: views make their drawing anew
  void touch_up();         ///< only what lies above changed: views repaint
  void sentence_changed(const QString& sentence);
  void growth_changed();   ///< one of the types that grow the path
  void rack_wanted();      ///< somebody pressed Enter on an open end

 private:
  void follow_document();
  void follow_units();
  void follow_moment();
  void choose_tint();

  Document& document_;
  PathMeasure measure_;
  Tint tint_;
  Ends ends_;
  std::optional<PortRef> focused_end_;
  std::optional<PortRef> hovered_end_;
  std::string run_type_;
  std::string upright_type_;
  std::string bend_type_;
  std::unique_ptr<Tool> tool_;
  std::vector<std::unique_ptr<Tool>> retired_;
  QString remark_;
  bool pipe_drawing_ = false;
};

}  // namespace fluewright
