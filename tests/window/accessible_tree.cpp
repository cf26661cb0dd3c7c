// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Reads a program's tree from the accessibility bus (AT-SPI over D-Bus), as a screen reader does, and fails where a
// control that one can act on has no name. Prints the tree.
//   accessible_tree PROGRAM-NAME

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusInterface>
#include <QDBusMetaType>
#include <QDBusReply>
#include <QSet>
#include <QThread>

#include <iostream>

struct Reference {
  QString service;
  QDBusObjectPath path;
};
Q_DECLARE_METATYPE(Reference)
QDBusArgument& operator<<(QDBusArgument& to, const Reference& from) {
  to.beginStructure();
  to << from.service << from.path;
  to.endStructure();
  return to;
}
const QDBusArgument& operator>>(const QDBusArgument& from, Reference& to) {
  from.beginStructure();
  from >> to.service >> to.path;
  from.endStructure();
  return from;
}

namespace {

const auto accessible = QStringLiteral("org.a11y.atspi.Accessible");

class Tree {
 public:
  explicit Tree(const QDBusConnection& bus) : bus_{bus} {}

  [[nodiscard]] QList<Reference> children(const Reference& of) const {
    QDBusInterface object(of.service, of.path.path(), accessible, bus_);
    const QDBusReply<QList<Reference>> reply = object.call(QStringLiteral("GetChildren"));
    return reply.isValid() ? reply.value() : QList<Reference>{};
  }
  [[nodiscard]] QString name(const Reference& of) const {
    QDBusInterface properties(of.service, of.path.path(), QStringLiteral("org.freedesktop.DBus.Properties"), bus_);
    const QDBusReply<QVariant> reply = properties.call(QStringLiteral("Get"), accessible, QStringLiteral("Name"));
    return reply.isValid() ? reply.value().toString() : QString();
  }
  [[nodiscard]] QString role(const Reference& of) const {
    QDBusInterface object(of.service, of.path.path(), accessible, bus_);
    const QDBusReply<QString> reply = object.call(QStringLiteral("GetRoleName"));
    return reply.isValid() ? reply.value() : QString();
  }

  void walk(const Reference& at, int depth) {
    constexpr int deepest = 24;
    if (depth > deepest) return;
    const QString said = name(at);
    const QString kind = role(at);
    std::cout << std::string(static_cast<std::size_t>(2 * depth), ' ') << kind.toStdString() << " '" << said.toStdString() << "'\n";
    static const QSet<QString> acted_on{QStringLiteral("push button"), QStringLiteral("button"), QStringLiteral("combo box"),
                                        QStringLiteral("slider"),      QStringLiteral("text"),   QStringLiteral("entry"),
                                        QStringLiteral("spin button"), QStringLiteral("list"),   QStringLiteral("table"),
                                        QStringLiteral("page tab"),    QStringLiteral("menu item"), QStringLiteral("check box")};
    ++seen_;
    if (acted_on.contains(kind) && said.isEmpty()) nameless_ << QStringLiteral("%1 at %2").arg(kind, at.path.path());
    for (const Reference& child : children(at)) walk(child, depth + 1);
  }

  [[nodiscard]] const QStringList& nameless() const { return nameless_; }
  [[nodiscard]] int seen() const { return seen_; }

 private:
  QDBusConnection bus_;
  QStringList nameless_;
  int seen_ = 0;
};

}  // namespace

int main(int argc, char** argv) {
  QCoreApplication application(argc, argv);
  if (argc != 2) return 2;
  qDBusRegisterMetaType<Reference>();
  qDBusRegisterMetaType<QList<Reference>>();
  QDBusInterface launcher(QStringLiteral("org.a11y.Bus"), QStringLiteral("/org/a11y/bus"), QStringLiteral("org.a11y.Bus"));
  const QDBusReply<QString> address = launcher.call(QStringLiteral("GetAddress"));
  if (!address.isValid()) {
    std::cerr << "no accessibility bus: " << address.error().message().toStdString() << '\n';
    return 1;
  }
  Tree tree(QDBusConnection::connectToBus(address.value(), QStringLiteral("a11y")));
  const Reference root{QStringLiteral("org.a11y.atspi.Registry"), QDBusObjectPath(QStringLiteral("/org/a11y/atspi/accessible/root"))};
  const QString wanted = QString::fromLocal8Bit(argv[1]);
  for (int attempt = 0; attempt < 100; ++attempt) {
    for (const Reference& program : tree.children(root)) {
      if (!tree.name(program).contains(wanted, Qt::CaseInsensitive)) continue;
      tree.walk(program, 0);
      for (const QString& one : tree.nameless()) std::cerr << "without a name: " << one.toStdString() << '\n';
      std::cerr << tree.seen() << " things, " << tree.nameless().size() << " without a name\n";
      constexpr int least = 40;  // a window with a few things in it has not shown its tree
      return tree.nameless().isEmpty() && tree.seen() >= least ? 0 : 1;
    }
    QThread::msleep(100);
  }
  std::cerr << "the program is not on the accessibility bus\n";
  return 1;
}
