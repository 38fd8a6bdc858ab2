package org.relegend.viewer.mode.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Kinds;
import org.relegend.map.BoardMap;
import org.relegend.map.Channel;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.ValueChoices;
import org.relegend.marking.ValueReading;
import org.relegend.table.PartCompletion;
import org.relegend.viewer.mode.bench.OpenJob;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.PartValues;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.QuestionQueue;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;

/**
 * What the map says of a part or a net, changed by typing; and what got into it by a slip, removed.
 * Names change, ids never do, so all that points at the part or net still does.
 */
public final class EntryEditor implements Room {
  /**
   * A part or net is to be removed from the map.
   *
   * @param places how many places go with it
   * @param joins how many pins are joined to nothing then
   * @param readings how many readings of the open job lie there
   */
  public record RemoveEntry(Subject subject, int places, int joins, int readings)
      implements Question {}

  private final MapDocument document;
  private final Selection selection;
  private final OpenJob bench;
  private final QuestionQueue questions;
  private final ChangeNotifier hub;

  public EntryEditor(Session session) {
    this.document = session.document();
    this.selection = session.selection();
    this.bench = session.room(OpenJob.class);
    this.questions = session.questions();
    this.hub = session.hub();
  }

  /** The net that was chosen, else the part that the eye is on; where nothing is, that is said. */
  public Optional<Subject> chosen() {
    hub.check();
    Optional<Subject> net = selection.subject().filter(Subject.OfNet.class::isInstance);
    return net.isPresent() ? net : part();
  }

  /** The part of the card that the eye is on; where there is none, that is said. */
  public Optional<Subject> part() {
    hub.check();
    Optional<Subject> part =
        selection
            .focus()
            .flatMap(SubjectQueries::partOf)
            .filter(document.map().parts()::has)
            .map(Subject::of);
    if (part.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
    }
    return part;
  }

  public Optional<PartEntry> entry(PartId part) {
    return document.map().part(part).map(PartEntry::of);
  }

  public Optional<NetEntry> entry(NetId net) {
    return document.map().net(net).map(NetEntry::of);
  }

  /** Names of the kinds of part, those that the designator's letters tell of first. */
  public List<String> kinds(PartId part) {
    List<String> names = new ArrayList<>();
    names.add("");
    document.map().part(part).stream()
        .flatMap(known -> Kinds.standard().possible(known.designator()).stream())
        .map(Kind::name)
        .forEach(names::add);
    Kinds.standard().all().stream()
        .map(Kind::name)
        .filter(name -> !names.contains(name))
        .sorted()
        .forEach(names::add);
    return names;
  }

  /** What to say of a part's fields as they are typed: a refusal is in the way of taking them. */
  public Notice look(PartId id, PartEntry typed) {
    BoardMap map = document.map();
    Optional<Part> before = map.part(id);
    if (before.isEmpty()) {
      return Notice.of(Notice.Kind.NOT_FOUND, id);
    }
    try {
      Part after = completed(typed.on(before.get(), kindName(typed.kind())), before.get());
      boolean taken =
          map.parts().stream()
              .anyMatch(
                  other ->
                      !other.id().equals(id)
                          && other.board().equals(after.board())
                          && other.designator().equals(after.designator()));
      return taken ? Notice.of(Notice.Kind.NAME_TAKEN, after.designator()) : lookAtValue(after);
    } catch (IllegalArgumentException unfit) {
      return Notice.of(Notice.Kind.REFUSED, String.valueOf(unfit.getMessage()));
    }
  }

  /** With what its type tells, where the kind, value or package was typed anew. */
  private static Part completed(Part after, Part before) {
    boolean same =
        after.kind().equals(before.kind())
            && after.value().equals(before.value())
            && after.casing().equals(before.casing());
    boolean typed = !same && Kinds.standard().match(after).type().isPresent();
    return typed ? new PartCompletion(Kinds.standard()).complete(after) : after;
  }

  private static Notice lookAtValue(Part part) {
    Optional<String> doubt = new PartCompletion(Kinds.standard()).doubt(part);
    if (doubt.isPresent()) {
      return Notice.of(Notice.Kind.ENTRY_DOUBT, doubt.get());
    }
    Optional<Kind> kind = Kinds.standard().of(part);
    if (!part.kind().isEmpty() && kind.isEmpty()) {
      return Notice.of(Notice.Kind.ENTRY_KIND, part.kind());
    }
    MarkingReadings<ValueReading> read = PartValues.read(part, part.value());
    return switch (read.outcome()) {
      case READ ->
          Notice.of(Notice.Kind.ENTRY_VALUE, part.value(), ValueChoices.text(read.readings()));
      case NO_VALUE -> Notice.of(Notice.Kind.ENTRY_FITS);
      case MALFORMED, OTHER_QUANTITY -> Notice.of(Notice.Kind.ENTRY_DOUBT, read.reason());
    };
  }

  /** As {@link #look(PartId, PartEntry)}. */
  public Notice look(NetId id, NetEntry typed) {
    BoardMap map = document.map();
    Optional<Net> before = map.net(id);
    if (before.isEmpty()) {
      return Notice.of(Notice.Kind.NOT_FOUND, id);
    }
    try {
      Net after = typed.on(before.get());
      if (map.nets().stream()
          .anyMatch(other -> !other.id().equals(id) && other.name().equals(after.name()))) {
        return Notice.of(Notice.Kind.NET_NAME_TAKEN, after.name());
      }
      Potential.Nature nature = after.potential().nature();
      if (nature == Potential.Nature.UNKNOWN && after.potential().volts() != 0) {
        return Notice.of(Notice.Kind.ENTRY_NATURE);
      }
      boolean wasMains = before.get().potential().nature() == Potential.Nature.MAINS;
      return wasMains && nature != Potential.Nature.MAINS
          ? Notice.of(Notice.Kind.ENTRY_MAINS, after.name())
          : Notice.of(Notice.Kind.ENTRY_FITS);
    } catch (IllegalArgumentException unfit) {
      return Notice.of(Notice.Kind.REFUSED, String.valueOf(unfit.getMessage()));
    }
  }

  /** Takes a part's fields as typed, as one edit; tells whether the map is so now. */
  public boolean change(PartId id, PartEntry typed) {
    hub.check();
    Notice seen = look(id, typed);
    Optional<Part> before = document.map().part(id);
    if (seen.kind().isRefusal() || before.isEmpty()) {
      hub.say(seen.kind(), seen.arguments().toArray());
      return false;
    }
    Part after = completed(typed.on(before.get(), kindName(typed.kind())), before.get());
    return after.equals(before.get())
        || apply(
            before.get().designator().text(),
            after.designator().text(),
            after.channel(),
            MapTables.PARTS.put(after));
  }

  /** Takes a net's fields as typed, as one edit; tells whether the map is so now. */
  public boolean change(NetId id, NetEntry typed) {
    hub.check();
    Notice seen = look(id, typed);
    Optional<Net> before = document.map().net(id);
    if (seen.kind().isRefusal() || before.isEmpty()) {
      hub.say(seen.kind(), seen.arguments().toArray());
      return false;
    }
    Net after = typed.on(before.get());
    return after.equals(before.get())
        || apply(before.get().name(), after.name(), after.channel(), MapTables.NETS.put(after));
  }

  private boolean apply(String was, String name, String channel, Edit put) {
    List<Edit> steps = new ArrayList<>();
    if (!channel.isEmpty() && !document.map().channels().has(channel)) {
      steps.add(MapTables.CHANNELS.put(new Channel(channel, "", "")));
    }
    steps.add(put);
    boolean renamed = !was.equals(name);
    String label = renamed ? "Rename " + was + " to " + name : "Change " + name;
    if (!document.apply(new EditGroup(label, steps))) {
      return false;
    }
    if (renamed) {
      hub.say(Notice.Kind.RENAMED, was, name);
    } else {
      hub.say(Notice.Kind.ENTRY_TAKEN, name);
    }
    return true;
  }

  /** The name of a kind, also where another word for it was typed. */
  private static String kindName(String typed) {
    return Kinds.standard().find(typed).map(Kind::name).orElse(typed);
  }

  /** Asks before what is chosen goes, and tells what goes with it. */
  public void askRemove() {
    chosen()
        .ifPresent(
            subject ->
                questions.ask(
                    new RemoveEntry(subject, places(subject), joins(subject), readings(subject))));
  }

  private int places(Subject subject) {
    return (int)
        document.map().placements().stream()
            .filter(placement -> goesWith(placement.subject(), subject))
            .count();
  }

  private int joins(Subject subject) {
    return (int)
        document.map().nets().stream()
            .flatMap(
                net ->
                    net.pins().stream()
                        .filter(
                            pin ->
                                subject.equals(Subject.of(net.id()))
                                    || goesWith(Subject.of(pin), subject)))
            .count();
  }

  private int readings(Subject subject) {
    return (int)
        bench.job().stream()
            .flatMap(job -> job.readings().stream())
            .filter(reading -> goesWith(reading.at(), subject))
            .count();
  }

  private static boolean goesWith(Subject one, Subject subject) {
    return one.equals(subject)
        || subject instanceof Subject.OfPart
            && SubjectQueries.partOf(one).map(Subject::of).filter(subject::equals).isPresent();
  }

  /** The part or net is to go. */
  public void answer(RemoveEntry question) {
    hub.check();
    questions.done();
    remove(question.subject());
  }

  private void remove(Subject subject) {
    String name = document.map().nameOf(subject);
    Edit edit =
        subject instanceof Subject.OfNet net
            ? MapTables.NETS.remove(net.net())
            : MapTables.PARTS.remove(SubjectQueries.partOf(subject).orElseThrow());
    if (document.apply(edit)) {
      hub.say(Notice.Kind.REMOVED, name);
    }
  }
}
