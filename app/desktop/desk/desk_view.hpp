// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/board.hpp"
#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/drawing.hpp"
#include "app/desktop/desk/hit.hpp"
#include "app/desktop/desk/projection.hpp"

#include <QWidget>

#include <optional>
#include <vector>

class QLineEdit;

namespace fluewright {

/// One view of the drawing. It moves its own paper (wheel, middle button, space) and hands everything else to the tool.
class DeskView : public QWidget {
  Q_OBJECT

 public:
  DeskView(Board& board, ViewKind kind, QWidget* parent = nullptr);
  ~DeskView() override;

  [[nodiscard]] const Projection& projection() const { return projection_; }
  /// The projection that is true about a port: in the rolled-out elevation each port has its own.
  [[nodiscard]] Projection projection_at(const PortRef& ref, const Port& port) const;
  /// Where pieces and the path stand as this view shows them.
  [[nodiscard]] const PathMeasure& measure() const;
  [[nodiscard]] bool is_elevation() const { return projection_.kind() != ViewKind::plan && projection_.kind() != ViewKind::isometric; }
  void look_from(ViewKind kind);
  [[nodiscard]] Camera& camera() { return camera_; }
  [[nodiscard]] const Camera& camera() const { return camera_; }
  [[nodiscard]] const Drawing& drawing() const;
  [[nodiscard]] Hit under(QPointF pixel) const;

  /// Puts the whole drawing in sight, with `room` times its size free on every side.
  void fit(double room = 0.0);
  [[nodiscard]] bool all_in_sight() const;
  /// Asks for the whole drawing to be in sight, in this view and those linked to it.
  void keep_in_sight() { emit sight_wanted(); }
  void begin_pan(QPointF pixel);
  void bring_into_sight(const PieceId& piece);
  void light_joint(const std::optional<PortRef>& joint);

  /// The little field for a typed length, beside a pixel.
  void open_length_entry(QPointF beside, const QString& first);
  void close_length_entry();
  [[nodiscard]] bool length_entry_open() const;

  /// The mouse as the rack's drag sees it, in this view's pixels.
  [[nodiscard]] Pointer pointer_at(QPointF pixel, Qt::MouseButton button = Qt::NoButton,
                                   Qt::KeyboardModifiers modifiers = Qt::NoModifier);

  [[nodiscard]] QSize sizeHint() const override { return {420, 300}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {160, 120}; }

 signals:
  void camera_moved();  ///< by hand
  void fit_wanted();    ///< by key
  void sight_wanted();  ///< something has grown
  void took_focus();
  void menu_wanted(QPoint global, const Hit& under);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void make_anew();
  bool next_end(bool forward);
  void describe();
  [[nodiscard]] std::vector<QRectF> under_widgets() const;  ///< the choices that lie on the paper
  [[nodiscard]] QString tip_at(QPointF pixel) const;

  Board& board_;
  Projection projection_;
  Camera camera_;
  mutable Drawing drawing_;
  mutable bool stale_ = true;
  mutable PathMeasure unrolled_;
  std::optional<QPointF> mouse_;  ///< for the rulers
  std::optional<PortRef> lit_joint_;
  std::optional<QPointF> pan_from_;
  bool space_held_ = false;
  QLineEdit* length_entry_ = nullptr;
};

}  // namespace fluewright
