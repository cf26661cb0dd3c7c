// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Reads a program's tree from the accessibility bus (AT-SPI over D-Bus), as a screen reader does, and fails where a
// thing that one can act on has no name, or anything has no role. Prints the tree.
//   accessible_tree PROGRAM-NAME

#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusMessage>
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
    const QDBusReply<QList<Reference>> reply = asked(of, accessible, QStringLiteral("GetChildren"), {});
    return reply.isValid() ? reply.value() : QList<Reference>{};
  }
  [[nodiscard]] QString name(const Reference& of) const {
    const QDBusReply<QVariant> reply =
        asked(of, QStringLiteral("org.freedesktop.DBus.Properties"), QStringLiteral("Get"), {accessible, QStringLiteral("Name")});
    return reply.isValid() ? reply.value().toString() : QString();
  }
  [[nodiscard]] QString role(const Reference& of) const {
    const QDBusReply<QString> reply = asked(of, accessible, QStringLiteral("GetRoleName"), {});
    return reply.isValid() ? reply.value() : QString();
  }

  /// Whether it is on the screen now (the state "showing", bit 25): the list of a shut combo box is not.
  [[nodiscard]] bool shows(const Reference& of) const {
    const QDBusReply<QList<uint>> reply = asked(of, accessible, QStringLiteral("GetState"), {});
    constexpr uint showing = 1U << 25U;
    return reply.isValid() && !reply.value().isEmpty() && (reply.value().front() & showing) != 0;
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
    if (kind.isEmpty() || (acted_on.contains(kind) && said.isEmpty() && shows(at))) nameless_ << QStringLiteral("%1 at %2").arg(kind, at.path.path());
    for (const Reference& child : children(at)) walk(child, depth + 1);
  }

  [[nodiscard]] const QStringList& nameless() const { return nameless_; }
  [[nodiscard]] int seen() const { return seen_; }
  void forget() {
    seen_ = 0;
    nameless_.clear();
  }

 private:
  [[nodiscard]] QDBusMessage asked(const Reference& of, const QString& interface, const QString& method,
                                   const QVariantList& with) const {
    QDBusMessage question = QDBusMessage::createMethodCall(of.service, of.path.path(), interface, method);
    question.setArguments(with);
    return bus_.call(question);
  }

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
  qDBusRegisterMetaType<QList<uint>>();
  const QDBusReply<QString> address = QDBusConnection::sessionBus().call(QDBusMessage::createMethodCall(
      QStringLiteral("org.a11y.Bus"), QStringLiteral("/org/a11y/bus"), QStringLiteral("org.a11y.Bus"), QStringLiteral("GetAddress")));
  if (!address.isValid()) {
    std::cerr << "no accessibility bus: " << address.error().message().toStdString() << '\n';
    return 1;
  }
  Tree tree(QDBusConnection::connectToBus(address.value(), QStringLiteral("a11y")));
  const Reference root{QStringLiteral("org.a11y.atspi.Registry"), QDBusObjectPath(QStringLiteral("/org/a11y/atspi/accessible/root"))};
  const QString wanted = QString::fromLocal8Bit(argv[1]);
  constexpr int attempts = 200;
  for (int attempt = 0; attempt < attempts; ++attempt) {
    for (const Reference& program : tree.children(root)) {
      if (!tree.name(program).contains(wanted, Qt::CaseInsensitive)) continue;
      tree.walk(program, 0);
      constexpr int least = 200;  // a window with a few things in it has not shown its tree yet
      if (tree.seen() < least && attempt < attempts - 1) {
        tree.forget();
        break;
      }
      for (const QString& one : tree.nameless()) std::cerr << "without a name: " << one.toStdString() << '\n';
      std::cerr << tree.seen() << " things, " << tree.nameless().size() << " without a name\n";
      return tree.nameless().isEmpty() && tree.seen() >= least ? 0 : 1;
    }
    QThread::msleep(100);
  }
  std::cerr << "the program is not on the accessibility bus\n";
  return 1;
}
