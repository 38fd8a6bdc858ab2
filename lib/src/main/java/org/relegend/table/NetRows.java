package org.relegend.table;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.relegend.map.Channel;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Potential;
import org.relegend.marking.Amount;
import org.relegend.marking.MarkingReadings;
import org.relegend.marking.Quantity;
import org.relegend.marking.TypedAmounts;
import org.relegend.marking.Waveform;

/** Reads rows of nets into a draft: what each carries, against what, and of which channel it is. */
final class NetRows {
  private record StatedReference(NetDraft net, TableRow row) {}

  private final MapDraft draft;
  private final ImportOptions options;
  private final TableProblems problems;
  private final List<String> warnings;
  private final Map<NetId, Integer> lines = new HashMap<>();
  private final Map<String, StatedReference> references = new HashMap<>();

  /**
   * A reader of such rows.
   *
   * @param warnings gains what a technician should look at twice
   */
  NetRows(MapDraft draft, ImportOptions options, TableProblems problems, List<String> warnings) {
    this.draft = draft;
    this.options = options;
    this.problems = problems;
    this.warnings = warnings;
  }

  void read(TableRow row) {
    row.read("net", this::net, problems).ifPresent(net -> fill(net, row));
  }

  /** Volts are against the reference: once all rows are read, whatever they name must be it. */
  void finish() {
    references.forEach(
        (name, stated) -> {
          Optional<NetDraft> against = stated.row().read("reference", this::net, problems);
          if (against
              .filter(net -> net.fields().potential().nature() != Potential.Nature.REFERENCE)
              .isPresent()) {
            problems.add(
                stated
                    .row()
                    .problem(
                        "reference",
                        ("%s is told against %s, which is not the reference of the map: give %s the"
                                + " nature reference, or tell the volts against the net that is")
                            .formatted(stated.net().name(), name, name)));
          }
        });
  }

  private NetDraft net(String name) {
    return draft
        .findNet(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    name.isEmpty()
                        ? "the name of a net was expected"
                        : "net %s is neither in the map nor in the table of pins".formatted(name)));
  }

  private void fill(NetDraft net, TableRow row) {
    Integer earlier = lines.putIfAbsent(net.id(), row.line());
    if (earlier != null) {
      problems.add(
          row.problem("net", "net %s stands in line %d already".formatted(net.name(), earlier)));
      return;
    }
    if (row.has("reference")) {
      references.putIfAbsent(row.text("reference"), new StatedReference(net, row));
    }
    potential(net, row);
    text(net, row, "channel", Net::channel, NetRows::inChannel);
    text(net, row, "note", Net::note, Net::withNote);
  }

  private static Net inChannel(Net net, String name) {
    return net.withChannel(new Channel(name, "", "").name());
  }

  private void text(
      NetDraft net,
      TableRow row,
      String column,
      Function<Net, String> field,
      BiFunction<Net, String, Net> with) {
    if (row.has(column)) {
      row.read(column, cell -> with.apply(net.fields(), cell), problems)
          .ifPresent(
              stated ->
                  take(net, row, column, stated, field.apply(net.fields()), field.apply(stated)));
    }
  }

  private void potential(NetDraft net, TableRow row) {
    if (!row.has("volts") && !row.has("nature")) {
      return;
    }
    Optional<Amount> volts =
        row.has("volts") ? row.read("volts", NetRows::volts, problems) : Optional.empty();
    Optional<Potential.Nature> nature =
        row.has("nature")
            ? row.read("nature", Potential.Nature::of, problems)
            : volts.flatMap(read -> nature(read, row));
    if (nature.isEmpty() || row.has("volts") && volts.isEmpty()) {
      return;
    }
    Potential before = net.fields().potential();
    double known = before.nature() == nature.get() ? before.volts() : 0;
    double stated = volts.map(Amount::value).orElse(known);
    fault(nature.get(), stated, volts)
        .ifPresentOrElse(
            fault -> problems.add(row.problem(row.has("volts") ? "volts" : "nature", fault)),
            () ->
                row.read("volts", cell -> new Potential(nature.get(), stated), problems)
                    .ifPresent(potential -> take(net, row, potential)));
  }

  private static Amount volts(String cell) {
    MarkingReadings<Amount> read = TypedAmounts.read(cell, Quantity.VOLTAGE);
    if (read.outcome() != MarkingReadings.Outcome.READ) {
      throw new IllegalArgumentException(read.reason());
    }
    if (read.readings().size() > 1) {
      throw new IllegalArgumentException(
          "the comma in \"%s\" may divide decimals or thousands: write it with a point"
              .formatted(cell));
    }
    return read.readings().get(0);
  }

  /** "6.3 V AC" tells it by itself. */
  private Optional<Potential.Nature> nature(Amount volts, TableRow row) {
    return switch (volts.waveform()) {
      case AC -> Optional.of(Potential.Nature.AC);
      case DC -> Optional.of(Potential.Nature.DC);
      default -> {
        problems.add(
            row.problem(
                "nature", "volts without what they are: write dc, ac or mains beside them"));
        yield Optional.empty();
      }
    };
  }

  private static Optional<String> fault(
      Potential.Nature nature, double volts, Optional<Amount> typed) {
    Waveform waveform = typed.map(Amount::waveform).orElse(Waveform.DC);
    return switch (nature) {
      case UNKNOWN, EARTH, REFERENCE ->
          volts == 0
              ? Optional.empty()
              : Optional.of(
                  "a net that is %s carries no volts of its own".formatted(nature.word()));
      case AC, MAINS ->
          volts < 0
              ? Optional.of("alternating volts are told without a sign, as root mean square")
              : Optional.empty();
      case DC ->
          waveform == Waveform.AC
              ? Optional.of("alternating volts on a net that is dc: correct one")
              : Optional.empty();
    };
  }

  private void take(NetDraft net, TableRow row, Potential stated) {
    Potential before = net.fields().potential();
    boolean wasMains = before.nature() == Potential.Nature.MAINS;
    if (wasMains && stated.nature() != Potential.Nature.MAINS && options.replace()) {
      warnings.add(
          "%s was mains in the map and is %s by the table: look twice"
              .formatted(net.name(), stated.nature().word()));
    }
    take(
        net,
        row,
        row.has("volts") ? "volts" : "nature",
        net.fields().withPotential(stated),
        text(before),
        text(stated));
  }

  /** Empty while the map tells nothing that the table could contradict. */
  private static String text(Potential potential) {
    String volts =
        potential.volts() == 0 ? "" : " " + new Amount(Quantity.VOLTAGE, potential.volts()).text(6);
    return potential.equals(Potential.UNKNOWN) ? "" : potential.nature().word() + volts;
  }

  private void take(
      NetDraft net, TableRow row, String column, Net stated, String known, String told) {
    boolean more = known.isEmpty() || told.startsWith(known + " ");
    if (more || known.equals(told) || options.replace()) {
      net.setFields(stated);
    } else {
      problems.add(
          row.problem(
              column,
              "%s is \"%s\" in the map and \"%s\" here: correct one, or let the table replace it"
                  .formatted(net.name(), known, told)));
    }
  }
}
