package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.relegend.circuit.Circuit;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;
import org.relegend.store.Json;
import org.relegend.store.StoreException;
import org.relegend.twin.TwinSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/**
 * {@code twin FOLDER PART-or-NET}: declared and accepted twins, and where there is none, what
 * follows from those.
 */
@Command(
    name = "twin",
    description = {
      "Tells the twin of a part, section, pin or net, how it is known, and where both are.",
      "Where none is declared it tells what follows from those that are."
    })
final class TwinCommand extends JsonCommand {
  private static final int PINS_TOLD = 3;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "WHAT", description = "R101, U102/X, U102.7 or a net")
  private String what = "";

  /** A twin with what it rests on. */
  private record Found(Subject twin, String basis, Evidence evidence, double trust) {}

  @Mixin private KindsOption kinds = new KindsOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    BoardMap map = openToRead(folder).map();
    Circuit circuit = kinds.circuit(map);
    Subject subject = new SubjectName(circuit).find(what);
    List<Found> found =
        map.twins().stream()
            .flatMap(pair -> pair.other(subject).stream().map(twin -> found(pair, twin)))
            .toList();
    List<Found> lines = found.isEmpty() ? concluded(circuit, subject) : found;
    return CommandResult.ok(
        () -> json(circuit.index(), subject, lines),
        out -> print(out, circuit.index(), subject, lines));
  }

  private static List<Found> concluded(Circuit circuit, Subject subject) {
    TwinSearch search = TwinSearch.of(circuit);
    return search.from(List.of(), search.known()).of(subject).stream()
        .map(
            pair ->
                new Found(
                    pair.a().equals(subject) ? pair.b() : pair.a(),
                    pair.basis().word(),
                    Evidence.MATCHED,
                    pair.trust()))
        .toList();
  }

  private static Found found(TwinPair pair, Subject twin) {
    return new Found(twin, "declared", Attestation.best(pair.evidence()).orElseThrow(), 1);
  }

  private static Json json(MapIndex index, Subject subject, List<Found> found) {
    return Json.object()
        .put("subject", index.map().nameOf(subject))
        .put("placements", Json.array(index.placementsOf(subject), PlacementText::json))
        .put(
            "twins",
            Json.array(
                found,
                twin ->
                    Json.object()
                        .put("subject", index.map().nameOf(twin.twin()))
                        .put("basis", twin.basis())
                        .put("evidence", twin.evidence().word())
                        .put("trust", twin.trust())
                        .put(
                            "placements",
                            Json.array(index.placementsOf(twin.twin()), PlacementText::json))));
  }

  private static void print(PrintWriter out, MapIndex index, Subject subject, List<Found> found) {
    TextTable table = new TextTable();
    table.row(index.map().nameOf(subject), "", place(index, subject));
    for (Found twin : found) {
      table.row(
          "twin " + index.map().nameOf(twin.twin()),
          "%s, %s".formatted(twin.basis(), twin.evidence().word()),
          place(index, twin.twin()));
    }
    table.print(out, "");
    if (found.isEmpty()) {
      out.println("no twin is known, and none follows from those that are");
    }
  }

  private static String place(MapIndex index, Subject subject) {
    String placed = PlacementText.text(index.placementsOf(subject));
    return placed.isEmpty() ? placesOfPins(index, subject) : placed;
  }

  /** A net without a label of its own lies where its pins do. */
  private static String placesOfPins(MapIndex index, Subject subject) {
    List<PinRef> placed =
        subject instanceof Subject.OfNet net
            ? index.map().net(net.net()).stream()
                .flatMap(found -> found.pins().stream())
                .filter(pin -> !index.placementsOf(Subject.of(pin)).isEmpty())
                .toList()
            : List.of();
    if (placed.isEmpty()) {
      return "not placed yet";
    }
    String first =
        placed.stream()
            .limit(PINS_TOLD)
            .map(Subject::of)
            .map(pin -> index.map().nameOf(pin) + " " + PlacementText.text(index.placementsOf(pin)))
            .collect(Collectors.joining("; "));
    return placed.size() <= PINS_TOLD
        ? "by its pins: " + first
        : "by its pins: %s; and %d more".formatted(first, placed.size() - PINS_TOLD);
  }
}
