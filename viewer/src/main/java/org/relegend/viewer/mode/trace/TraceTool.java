package org.relegend.viewer.mode.trace;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.relegend.circuit.Kinds;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapIndex;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;
import org.relegend.table.NetClash;
import org.relegend.table.TraceException;
import org.relegend.table.TraceLine;
import org.relegend.table.TraceResult;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Question;
import org.relegend.viewer.session.QuestionQueue;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.Target;
import org.relegend.viewer.session.TypedName;
import org.relegend.viewer.session.TypedText;

/** Building a net, pin by pin. */
public final class TraceTool implements Mode, TypedText {
  /** Pins to be joined are on another net already: join the two, move the pins, or leave them. */
  public record PinsTaken(NetClash clash) implements Question {}

  /** A part was pointed at, and it has several pins. */
  public record WhichPin(PartId part, List<PinRef> pins) implements Question {
    public WhichPin {
      pins = List.copyOf(pins);
    }
  }

  private final Session session;
  private final MapDocument document;
  private final Attester hand;
  private final ChangeNotifier hub;
  private final QuestionQueue questions;
  private String name = "";
  private @Nullable NetId net;

  public TraceTool(Session session) {
    this.session = session;
    this.document = session.document();
    this.hand = session.hand();
    this.hub = session.hub();
    this.questions = session.questions();
  }

  @Override
  public String word() {
    return "trace";
  }

  @Override
  public Optional<Notice.Kind> prompt() {
    return Optional.of(Notice.Kind.PROMPT_TRACE);
  }

  @Override
  public void click(Target target) {
    session
        .gate()
        .through(
            target.zones(),
            () ->
                target
                    .placement()
                    .ifPresentOrElse(this::addShown, () -> hub.say(Notice.Kind.NOTHING_HERE)));
  }

  private void addShown(Placement hit) {
    add(hit);
    showTraced();
  }

  private void showTraced() {
    net().ifPresent(grown -> session.walk().showDone(Subject.of(grown.id())));
  }

  @Override
  public Optional<String> heading(Subject chosen) {
    return chosen instanceof Subject.OfNet ? Optional.of("strip.tracing") : Optional.empty();
  }

  @Override
  public Optional<TypedText> typedText() {
    return Optional.of(this);
  }

  @Override
  public boolean holdsKeyboard() {
    return false;
  }

  @Override
  public String text() {
    return name;
  }

  /** Nothing is done with the line before Enter. */
  @Override
  public void type(String typed) {}

  /** A line typed while tracing. */
  @Override
  public boolean enter(String line) {
    hub.check();
    hub.moveOn();
    typed(line);
    showTraced();
    return true;
  }

  /** A pin named by the question which one is meant. */
  public void answer(PinRef pin) {
    questions.answered();
    add(pin);
    showTraced();
  }

  /** The two nets are one; or the pins are moved; or neither. */
  public void answer(PinsTaken question, NetClash.Choice choice) {
    questions.answered();
    resolve(question.clash(), choice);
    showTraced();
  }

  /** The net that grows, once it has a pin or a name that the map knows. */
  public Optional<Net> net() {
    return Optional.ofNullable(net).flatMap(document.map()::net);
  }

  /** The name that was given to it; empty where it gets the next free one. */
  public String name() {
    return name;
  }

  /** Starts a net: one the map knows under this name grows on, else a new one is begun. */
  public void begin(String typed) {
    hub.check();
    name = typed.strip();
    net = new TypedName(document.index()).net(name).map(Net::id).orElse(null);
    hub.say(Notice.Kind.TRACING, name.isEmpty() ? freshId().text() : name);
    hub.fire(Change.TOOL);
  }

  /** The next pin starts another net. */
  @Override
  public void drop() {
    name = "";
    net = null;
  }

  private NetId freshId() {
    return new TypedName(document.index()).freshNet(name);
  }

  /** What was pointed at on a picture joins the net. */
  public void add(Placement placement) {
    Subject subject = placement.subject();
    if (subject instanceof Subject.OfPin pin) {
      add(pin.pin());
    } else if (subject instanceof Subject.OfNet label) {
      meet(label.net());
    } else if (subject instanceof Subject.OfSection section) {
      document
          .map()
          .part(section.part())
          .ifPresent(part -> addPart(part, pinsOf(part, section.section())));
    } else if (subject instanceof Subject.OfPart whole) {
      document.map().part(whole.part()).ifPresent(part -> addPart(part, pinsOf(part)));
    }
  }

  private static List<PinRef> pinsOf(Part part) {
    return part.pins().stream().map(part::ref).toList();
  }

  private static List<PinRef> pinsOf(Part part, String section) {
    return part.pins().stream()
        .filter(pin -> part.section(section).filter(found -> found.has(pin.number())).isPresent())
        .map(part::ref)
        .toList();
  }

  /** A part stands for its only pin, or the only one still free; else one has to say which. */
  private void addPart(Part part, List<PinRef> pins) {
    MapIndex index = document.index();
    List<PinRef> free = pins.stream().filter(pin -> index.netsOf(pin).isEmpty()).toList();
    if (pins.isEmpty()) {
      hub.say(Notice.Kind.PINS_UNKNOWN, part.designator());
    } else if (pins.size() == 1) {
      add(pins.get(0));
    } else if (free.size() == 1) {
      add(free.get(0));
    } else {
      questions.ask(new WhichPin(part.id(), pins));
    }
  }

  /** Joins a pin; asks, where it is on another net already. */
  public void add(PinRef pin) {
    Optional<Net> on = document.index().netsOf(pin).stream().findFirst();
    if (on.isPresent()) {
      addTaken(pin, on.get());
      return;
    }
    NetId to = net == null ? freshId() : net;
    Net.Member member = new Net.Member(pin, List.of(hand.attests()));
    if (document.apply(new NetEdits.JoinPins(to, List.of(member)))) {
      grown(to);
      hub.say(Notice.Kind.JOINED, nameOf(pin), nameOf(to));
    }
  }

  private void addTaken(PinRef pin, Net on) {
    if (on.id().equals(net)) {
      hub.say(Notice.Kind.ALREADY_JOINED, nameOf(pin), on.name());
    } else if (net == null && name.isEmpty()) {
      grown(on.id());
      hub.say(Notice.Kind.TRACING, on.name());
    } else {
      NetId wanted = net == null ? freshId() : net;
      questions.ask(new PinsTaken(new NetClash(wanted, on.id(), List.of(pin), hand.attests())));
    }
  }

  /** A net label was pointed at: the trace goes on there, or the two nets are one. */
  private void meet(NetId other) {
    if (net == null && name.isEmpty()) {
      grown(other);
      hub.say(Notice.Kind.TRACING, nameOf(other));
    } else if (net != null && !other.equals(net)) {
      questions.ask(new PinsTaken(new NetClash(net, other, List.of(), hand.attests())));
    }
  }

  /** A typed line: the name of a net, which grows on or is begun, or a net and its pins. */
  public void typed(String line) {
    if (line.strip().split("\\s+", 2).length < 2) {
      begin(line);
      return;
    }
    try {
      TraceResult trace = TraceLine.read(line, document.index(), Kinds.standard(), hand.attests());
      if (document.apply(trace.edit())) {
        trace.clashes().forEach(clash -> questions.ask(new PinsTaken(clash)));
        grown(trace.net());
        hub.say(Notice.Kind.LINE_TRACED, nameOf(trace.net()), trace.joined().size());
      }
    } catch (TraceException unreadable) {
      hub.say(Notice.Kind.REFUSED, unreadable.withPlace());
    }
  }

  /** Does what the technician says about pins that are on another net. */
  public void resolve(NetClash clash, NetClash.Choice choice) {
    String other = nameOf(clash.other());
    Optional<Edit> edit = clash.edit(choice);
    if (edit.isEmpty()) {
      hub.say(Notice.Kind.PIN_LEFT, pins(clash), other);
    } else if (document.apply(named(clash, choice, edit.get()))) {
      grown(clash.wanted());
      if (choice == NetClash.Choice.JOIN) {
        hub.say(Notice.Kind.NETS_JOINED, nameOf(clash.wanted()), other);
      } else {
        hub.say(Notice.Kind.PIN_MOVED, pins(clash), nameOf(clash.wanted()));
      }
    }
  }

  /** With the names in its label. */
  private Edit named(NetClash clash, NetClash.Choice choice, Edit edit) {
    Edit core =
        choice == NetClash.Choice.JOIN || clash.pins().isEmpty()
            ? new NetEdits.MergeNets(clash.wanted(), clash.other())
            : new NetEdits.MovePin(clash.pins().get(0), clash.wanted(), clash.evidence());
    return new EditGroup(core.label(document.map()), List.of(edit));
  }

  private String pins(NetClash clash) {
    return clash.pins().stream().map(this::nameOf).collect(Collectors.joining(", "));
  }

  private void grown(NetId to) {
    net = to;
    name = nameOf(to);
    hub.fire(Change.TOOL);
  }

  private String nameOf(PinRef pin) {
    return document.map().nameOf(Subject.of(pin));
  }

  private String nameOf(NetId id) {
    return document.map().nameOf(Subject.of(id));
  }
}
