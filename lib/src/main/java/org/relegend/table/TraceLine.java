package org.relegend.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.circuit.Kinds;
import org.relegend.map.Attestation;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.MapTables;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.NetId;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/**
 * A line typed while tracing: a net, the pins that are joined there, and at the end, if need be,
 * how one knows.
 *
 * <pre>
 *   A_ATT  C102.-  R106.1  measured
 *   A_MIR  U101.6,9,11,14  R112.2
 *   "-15 V"  psu:Q2.E  main:J4.3
 * </pre>
 *
 * <p>Several pins of one part are divided by commas; a part of which several boards have one is
 * written with its board before it; a net name with spaces stands in quotation marks. Small letters
 * will do where the map has the name in capitals. Parts and pins that the map doesn't have are
 * made, new designators in capitals.
 */
public final class TraceLine {
  private final MapIndex index;
  private final TraceParts parts;
  private final Set<PinRef> pins = new LinkedHashSet<>();

  private TraceLine(MapIndex index, Kinds kinds) {
    this.index = index;
    parts = new TraceParts(index, kinds);
  }

  /**
   * Reads a line.
   *
   * @param by who traces and when, and on what evidence where the line doesn't end in a word for it
   * @throws TraceException naming the stretch of the line that can't be read
   */
  public static TraceResult read(String line, MapIndex index, Kinds kinds, Attestation by)
      throws TraceException {
    return new TraceLine(index, kinds).read(line, by);
  }

  private TraceResult read(String line, Attestation by) throws TraceException {
    List<TraceWord> words = TraceWord.split(line);
    if (words.isEmpty()) {
      throw new TraceException(0, 0, "type a net and its pins, like: A_ATT C102.- R106.1 measured");
    }
    NetId net = net(words.get(0));
    TraceWord last = words.get(words.size() - 1);
    Optional<Evidence> evidence = words.size() > 1 ? evidence(last) : Optional.empty();
    for (TraceWord word : words.subList(1, words.size() - (evidence.isPresent() ? 1 : 0))) {
      pins.addAll(parts.pins(word));
    }
    if (pins.isEmpty()) {
      throw new TraceException(
          line.length(),
          line.length(),
          "which pins are on %s? Type them like C102.- or U101.6,9".formatted(net));
    }
    Attestation attestation =
        new Attestation(evidence.orElse(by.evidence()), by.author(), by.at(), by.note());
    return trace(net, attestation);
  }

  private NetId net(TraceWord word) throws TraceException {
    List<Net> named = index.netsNamed(word.text());
    if (named.isEmpty()) {
      named =
          index.map().nets().stream()
              .filter(net -> net.name().equalsIgnoreCase(word.text()))
              .toList();
    }
    if (named.size() > 1) {
      throw word.wrong("there are %d nets called so: rename one first".formatted(named.size()));
    }
    return named.isEmpty() ? newNet(word) : named.get(0).id();
  }

  private NetId newNet(TraceWord word) throws TraceException {
    try {
      NetId id = new NetId(word.text());
      if (index.map().nets().has(id)) {
        throw word.wrong(
            "the net that was once called so is %s now: type that, or another name"
                .formatted(index.map().nameOf(Subject.of(id))));
      }
      return id;
    } catch (IllegalArgumentException refused) {
      throw word.wrong(refused);
    }
  }

  private static Optional<Evidence> evidence(TraceWord word) {
    try {
      return Optional.of(Evidence.of(word.text()));
    } catch (IllegalArgumentException other) {
      return Optional.empty();
    }
  }

  private TraceResult trace(NetId net, Attestation attestation) {
    List<PinRef> free = new ArrayList<>();
    Map<NetId, List<PinRef>> taken = new LinkedHashMap<>();
    for (PinRef pin : pins) {
      List<Net> others =
          index.netsOf(pin).stream().filter(other -> !other.id().equals(net)).toList();
      others.forEach(other -> taken.computeIfAbsent(other.id(), id -> new ArrayList<>()).add(pin));
      if (others.isEmpty()) {
        free.add(pin);
      }
    }
    List<Edit> steps = new ArrayList<>();
    parts.changed().forEach(part -> steps.add(MapTables.PARTS.put(part)));
    if (!free.isEmpty()) {
      steps.add(new NetEdits.JoinPins(net, members(net, free, attestation)));
    }
    List<NetClash> clashes = new ArrayList<>();
    taken.forEach((other, on) -> clashes.add(new NetClash(net, other, on, attestation)));
    return new TraceResult(net, new EditGroup("Trace a net", steps), free, parts.made(), clashes);
  }

  /** Pins with the attestation, unless the same person said so on the same evidence before. */
  private List<Net.Member> members(NetId net, List<PinRef> free, Attestation attestation) {
    List<Net.Member> members = new ArrayList<>();
    for (PinRef pin : free) {
      List<Attestation> known =
          index
              .map()
              .net(net)
              .flatMap(n -> n.member(pin))
              .map(Net.Member::evidence)
              .orElse(List.of());
      members.add(
          new Net.Member(
              pin, ImportAttestations.by(attestation, known) ? List.of() : List.of(attestation)));
    }
    return members;
  }
}
