package org.relegend.table;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;
import org.relegend.map.Section;

/** Reads rows of joined pins into a draft. */
final class PinRows {
  private record StatedNet(int line, String net) {}

  private final MapDraft draft;
  private final ImportOptions options;
  private final TableProblems problems;
  private final boolean makesParts;
  private final Map<PinRef, StatedNet> statedNets = new HashMap<>();
  private int joined;

  /**
   * A reader of such rows.
   *
   * @param makesParts whether a part that isn't known is made; else that is a problem
   */
  PinRows(MapDraft draft, ImportOptions options, TableProblems problems, boolean makesParts) {
    this.draft = draft;
    this.options = options;
    this.problems = problems;
    this.makesParts = makesParts;
  }

  /** How many pins were joined anew or moved. */
  int joined() {
    return joined;
  }

  void read(TableRow row) {
    Optional<PartDraft> part = row.read("part", this::part, problems);
    Optional<Pin> pin = row.read("pin", number -> new Pin(number, ""), problems);
    Optional<Pin> role = row.read("role", text -> new Pin("1", text), problems);
    Optional<Evidence> evidence =
        row.has("evidence")
            ? row.read("evidence", Evidence::of, problems)
            : Optional.of(ImportOptions.OF_PINS);
    if (part.isEmpty() || pin.isEmpty() || role.isEmpty() || evidence.isEmpty()) {
      return;
    }
    PinRef ref = fill(part.get(), pin.get(), row);
    if (row.has("net")) {
      row.read("net", draft::findOrMakeNet, problems)
          .ifPresent(net -> join(net, ref, options.attestation(evidence.get()), row));
    }
  }

  private PartDraft part(String text) {
    PartName name = PartName.parse(text);
    if (makesParts) {
      return draft.findOrMake(name);
    }
    return draft
        .find(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "part %s is neither in the map nor in the table of parts".formatted(name)));
  }

  private PinRef fill(PartDraft part, Pin pin, TableRow row) {
    part.tell();
    Pin known = part.pin(pin.number()).orElse(pin);
    String role = row.text("role");
    if (row.has("section")) {
      row.read("section", text -> new Section(text, Map.of()), problems)
          .ifPresent(section -> fillSection(part, section.name(), pin.number(), row));
      role = known.role().isEmpty() ? role : known.role();
    }
    return part.put(new Pin(pin.number(), agreed(known.role(), role, part, pin, row)));
  }

  private void fillSection(PartDraft part, String section, String pin, TableRow row) {
    String known = part.roleIn(section, pin);
    Pin number = new Pin(pin, "");
    part.putRole(section, pin, agreed(known, row.text("role"), part, number, row));
  }

  /** The role that is known and the one that is told made one; a problem where they differ. */
  private String agreed(String known, String text, PartDraft part, Pin pin, TableRow row) {
    if (text.isEmpty() || text.equals(known)) {
      return known;
    }
    if (known.isEmpty() || options.replace()) {
      return text;
    }
    problems.add(
        row.problem(
            "role",
            ("pin %s.%s is \"%s\" in the map or further up and \"%s\" here: correct one, or let the"
                    + " table replace it")
                .formatted(part.designator(), pin.number(), known, text)));
    return known;
  }

  private void join(NetDraft net, PinRef pin, Attestation attestation, TableRow row) {
    StatedNet earlier = statedNets.putIfAbsent(pin, new StatedNet(row.line(), net.name()));
    if (earlier != null && !earlier.net().equals(net.name())) {
      problems.add(
          row.problem(
              "net",
              "pin %s is on net %s here and on net %s in line %d"
                  .formatted(
                      row.text("part") + "." + pin.pin(),
                      net.name(),
                      earlier.net(),
                      earlier.line())));
      return;
    }
    NetDraft current = net.has(pin) ? net : draft.netOf(pin).orElse(net);
    if (!current.equals(net)) {
      if (!options.replace()) {
        problems.add(
            row.problem(
                "net",
                ("pin %s is on net %s in the map and on net %s here: correct one, or let the table"
                        + " replace it")
                    .formatted(row.text("part") + "." + pin.pin(), current.name(), net.name())));
        return;
      }
      current.cut(pin);
    }
    joined += net.has(pin) ? 0 : 1;
    net.join(pin, attestation);
    draft.setNetOf(pin, net);
  }
}
