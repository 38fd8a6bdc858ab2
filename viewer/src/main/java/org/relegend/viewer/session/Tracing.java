package org.relegend.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapIndex;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PinRef;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/** Building a net, pin by pin. */
public final class Tracing {
  private final Document document;
  private final Hand hand;
  private final Hub hub;
  private final Questions questions;
  private String name = "";
  private @Nullable NetId net;

  Tracing(Document document, Hand hand, Hub hub, Questions questions) {
    this.document = document;
    this.hand = hand;
    this.hub = hub;
    this.questions = questions;
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
    net = new Naming(document.index()).net(name).map(Net::id).orElse(null);
    hub.say(Notice.Kind.TRACING, name.isEmpty() ? freshId().text() : name);
    hub.fire(Change.TOOL);
  }

  /** The next pin starts another net. */
  void reset() {
    name = "";
    net = null;
  }

  private NetId freshId() {
    return new Naming(document.index()).freshNet(name);
  }

  /** What was pointed at on a picture joins the net. */
  void add(Placement placement) {
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
      questions.ask(new Question.WhichPin(part.id(), pins));
    }
  }

  /** Joins a pin; asks, where it is on another net already. */
  void add(PinRef pin) {
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
      questions.ask(new Question.PinTaken(pin, on.id(), net == null ? freshId() : net));
    }
  }

  /** A net label was pointed at: the trace goes on there, or the two nets are one. */
  private void meet(NetId other) {
    if (net == null && name.isEmpty()) {
      grown(other);
      hub.say(Notice.Kind.TRACING, nameOf(other));
    } else if (net != null && !other.equals(net)) {
      joinNets(net, other);
    }
  }

  /** The two nets are one. */
  public void join(Question.PinTaken question) {
    joinNets(question.tracing(), question.on());
  }

  private void joinNets(NetId kept, NetId gone) {
    List<Edit> steps = new ArrayList<>();
    BoardMap map = document.map();
    if (!map.nets().has(kept)) {
      steps.add(new NetEdits.PutNet(Net.named(kept)));
    }
    Edit merge = new NetEdits.MergeNets(kept, gone);
    String label = merge.label(map);
    String names = nameOf(gone);
    steps.add(merge);
    if (document.apply(steps.size() == 1 ? merge : new EditGroup(label, steps))) {
      grown(kept);
      hub.say(Notice.Kind.NETS_JOINED, nameOf(kept), names);
    }
  }

  /** The pin belongs here and not there. */
  public void move(Question.PinTaken question) {
    if (document.apply(new NetEdits.MovePin(question.pin(), question.tracing(), hand.attests()))) {
      grown(question.tracing());
      hub.say(Notice.Kind.PIN_MOVED, nameOf(question.pin()), nameOf(question.tracing()));
    }
  }

  /** The pin stays where it is. */
  public void leave(Question.PinTaken question) {
    hub.say(Notice.Kind.PIN_LEFT, nameOf(question.pin()), nameOf(question.on()));
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
