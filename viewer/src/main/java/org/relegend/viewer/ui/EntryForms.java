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
import org.relegend.viewer.control.ChannelOrder;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.mode.edit.EntryEditor;
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
    session.room(EntryEditor.class).chosen().ifPresent(subject -> change(over, session, subject));
  }

  /** The part of the card, also where its net was chosen. */
  static void changePart(Component over, Session session) {
    session.room(EntryEditor.class).part().ifPresent(subject -> change(over, session, subject));
  }

  private static void change(Component over, Session session, Subject subject) {
    if (subject instanceof Subject.OfNet net) {
      session
          .room(EntryEditor.class)
          .entry(net.net())
          .ifPresent(now -> net(over, session, net.net(), now));
    } else if (subject instanceof Subject.OfPart part) {
      session
          .room(EntryEditor.class)
          .entry(part.part())
          .ifPresent(now -> part(over, session, part.part(), now));
    }
  }

  private static void part(Component over, Session session, PartId id, PartEntry now) {
    new Form("part")
        .line("designator", now.designator())
        .words("kind", session.room(EntryEditor.class).kinds(id), now.kind())
        .line("value", now.value())
        .line("casing", now.casing())
        .words("channel", channels(session), now.channel())
        .lines("note", now.note())
        .begin("value")
        .looking(stated -> verdict(session.room(EntryEditor.class).look(id, part(stated))))
        .ask(over)
        .ifPresent(stated -> session.room(EntryEditor.class).change(id, part(stated)));
  }

  private static PartEntry part(Map<String, String> stated) {
    return new PartEntry(
        stated.getOrDefault("designator", ""),
        stated.getOrDefault("kind", ""),
        stated.getOrDefault("value", ""),
        stated.getOrDefault("casing", ""),
        stated.getOrDefault("channel", ""),
        stated.getOrDefault("note", ""));
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
        .looking(stated -> verdict(session.room(EntryEditor.class).look(id, net(stated))))
        .ask(over)
        .ifPresent(stated -> session.room(EntryEditor.class).change(id, net(stated)));
  }

  private static NetEntry net(Map<String, String> stated) {
    return new NetEntry(
        stated.getOrDefault("name", ""),
        stated.getOrDefault("nature", ""),
        stated.getOrDefault("volts", ""),
        stated.getOrDefault("channel", ""),
        stated.getOrDefault("note", ""));
  }

  private static List<String> channels(Session session) {
    return Stream.concat(Stream.of(""), ChannelOrder.of(session.map()).stream()).toList();
  }

  private static Form.Validity verdict(Notice seen) {
    return new Form.Validity(
        Messages.of(seen).strip(), seen.kind().isRefusal(), DOUBTS.contains(seen.kind()));
  }
}
