package org.relegend.viewer.ui;

import java.awt.Component;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.viewer.control.Channels;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Texts;
import org.relegend.viewer.mode.edit.Entries;
import org.relegend.viewer.mode.edit.NetEntry;
import org.relegend.viewer.mode.edit.PartEntry;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;

/** Forms in which what the map says of a part or a net is put right. */
final class EntryForms {
  /** What is looked at a second time before it is taken. */
  private static final Set<Notice.Kind> DOUBTS =
      EnumSet.of(Notice.Kind.ENTRY_DOUBT, Notice.Kind.ENTRY_KIND, Notice.Kind.ENTRY_MAINS);

  private EntryForms() {}

  /** The net that was chosen, else the part that the eye is on. */
  static void change(Component over, Session session) {
    session.room(Entries.class).chosen().ifPresent(subject -> change(over, session, subject));
  }

  /** The part of the card, also where its net was chosen. */
  static void changePart(Component over, Session session) {
    session.room(Entries.class).part().ifPresent(subject -> change(over, session, subject));
  }

  private static void change(Component over, Session session, Subject subject) {
    if (subject instanceof Subject.OfNet net) {
      session
          .room(Entries.class)
          .entry(net.net())
          .ifPresent(now -> net(over, session, net.net(), now));
    } else if (subject instanceof Subject.OfPart part) {
      session
          .room(Entries.class)
          .entry(part.part())
          .ifPresent(now -> part(over, session, part.part(), now));
    }
  }

  private static void part(Component over, Session session, PartId id, PartEntry now) {
    new Form("part")
        .line("designator", now.designator())
        .words("kind", session.room(Entries.class).kinds(id), now.kind())
        .line("value", now.value())
        .line("casing", now.casing())
        .words("channel", channels(session), now.channel())
        .lines("note", now.note())
        .begin("value")
        .looking(told -> verdict(session.room(Entries.class).look(id, part(told))))
        .ask(over)
        .ifPresent(told -> session.room(Entries.class).change(id, part(told)));
  }

  private static PartEntry part(Map<String, String> told) {
    return new PartEntry(
        told.getOrDefault("designator", ""),
        told.getOrDefault("kind", ""),
        told.getOrDefault("value", ""),
        told.getOrDefault("casing", ""),
        told.getOrDefault("channel", ""),
        told.getOrDefault("note", ""));
  }

  private static void net(Component over, Session session, NetId id, NetEntry now) {
    new Form("net")
        .line("name", now.name())
        .choice(
            "nature",
            Stream.of(Potential.Nature.values()).map(Potential.Nature::word).toList(),
            now.nature())
        .line("volts", now.volts())
        .words("channel", channels(session), now.channel())
        .lines("note", now.note())
        .looking(told -> verdict(session.room(Entries.class).look(id, net(told))))
        .ask(over)
        .ifPresent(told -> session.room(Entries.class).change(id, net(told)));
  }

  private static NetEntry net(Map<String, String> told) {
    return new NetEntry(
        told.getOrDefault("name", ""),
        told.getOrDefault("nature", ""),
        told.getOrDefault("volts", ""),
        told.getOrDefault("channel", ""),
        told.getOrDefault("note", ""));
  }

  private static List<String> channels(Session session) {
    return Stream.concat(Stream.of(""), Channels.of(session.map()).stream()).toList();
  }

  private static Form.Verdict verdict(Notice seen) {
    return new Form.Verdict(
        Texts.of(seen).strip(), seen.kind().isRefusal(), DOUBTS.contains(seen.kind()));
  }
}
