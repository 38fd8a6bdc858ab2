package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Job;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.RuleFinding;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.bench.suspect.FaultBracket;
import org.relegend.bench.suspect.NextReading;
import org.relegend.bench.suspect.NodeFigure;
import org.relegend.bench.suspect.SignalPath;
import org.relegend.bench.suspect.Suspect;
import org.relegend.bench.suspect.Suspects;
import org.relegend.bench.suspect.TwinComparison;
import org.relegend.circuit.Circuit;
import org.relegend.hazard.Cautions;
import org.relegend.hazard.Hazards;
import org.relegend.map.BoardMap;
import org.relegend.map.NameRules;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.store.JobFolder;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.MapFormat;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code suspects FOLDER}. */
@Command(
    name = "suspects",
    description = {
      "Ranks a bench job's suspects, with reasons and the next best reading.",
      "Also what the readings say. Reads only; nothing is written."
    })
final class SuspectsCommand extends JsonCommand {
  /** More than these nobody looks at, and shares below this are noise. */
  private static final int MOST = 25;

  private static final double LEAST = 0.0005;

  private static final int PRINTED = 8;

  /** Columns of a line of a caution. */
  private static final int WIDTH = 100;

  @Parameters(paramLabel = "FOLDER", description = "the job's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--map",
      paramLabel = "MAP",
      description = "the folder of the map, where it isn't where the job last found it")
  private @Nullable Path map;

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    if (!JobFolder.isJob(folder) && Files.exists(folder.resolve(MapFolder.MAP_FILE))) {
      throw new CommandFailure(
          "%s holds a board map, and suspects are of a job: make one with the command job"
              .formatted(folder));
    }
    JobFolder opened = JobFolder.openReadOnly(folder);
    opened.notices().forEach(this::note);
    Job job = opened.job();
    BoardMap under = mapOf(opened);
    UnitReadings unit = UnitReadings.of(job, Circuit.of(under));
    Suspects found = Suspects.of(unit);
    List<TwinComparison> comparisons = TwinComparison.inOrder(unit, SignalPath.of(unit));
    return CommandResult.ok(
        () -> json(unit, found, comparisons), out -> print(out, unit, found, comparisons));
  }

  private BoardMap mapOf(JobFolder opened) throws CommandFailure, StoreException {
    Path place = map == null ? opened.mapPlace() : map;
    if (map == null && !Files.isDirectory(place)) {
      throw new CommandFailure(
          "the map of this job is not at %s any more: name its folder with --map".formatted(place));
    }
    BoardMap under = openToRead(place).map();
    if (!under.id().equals(opened.job().map().id())) {
      throw new CommandFailure(
          "the job in %s lies over the map \"%s\", and %s holds another, \"%s\""
              .formatted(folder, opened.job().map().title(), place, under.info().title()));
    }
    if (!MapFormat.digest(under).equals(opened.job().map().digest())) {
      note(
          "the map has changed since the job last saw it; what follows is of the map as it is now");
    }
    return under;
  }

  private static List<Suspect> shown(Suspects found) {
    return found.suspects().stream()
        .filter(suspect -> suspect.score() >= LEAST)
        .limit(MOST)
        .toList();
  }

  private static Json json(UnitReadings unit, Suspects found, List<TwinComparison> comparisons) {
    BoardMap map = unit.map();
    Json.Obj next =
        found
            .next()
            .map(
                reading ->
                    Json.object()
                        .put("at", map.nameOf(reading.at()))
                        .put("where", reading.where())
                        .put("why", reading.why()))
            .orElseGet(
                () ->
                    Json.object()
                        .put("at", "")
                        .put("where", "")
                        .put("why", "no place is left that may be proposed"));
    return Json.object()
        .put("suspects", Json.array(shown(found), suspect -> suspect(map, suspect)))
        .put("unexplained", found.unexplained())
        .put("unsolved", found.unsolved())
        .put("findings", Json.array(found.findings(), finding -> finding(map, finding)))
        .put("next", next)
        .put("bracket", bracket(map, found.bracket()))
        .put("compared", Json.array(comparisons, comparison -> compared(map, comparison)))
        .put(
            "zones",
            Json.array(
                unit.hazards().hazards().proposals(unit.circuit()), HazardsCommand::proposal))
        .put(
            "cautions",
            Json.array(
                Cautions.all(),
                caution ->
                    Json.object().put("title", caution.title()).put("text", caution.text())));
  }

  private static Json suspect(BoardMap map, Suspect suspect) {
    return Json.object()
        .put("part", map.nameOf(suspect.part()))
        .put("score", suspect.score())
        .put("reasons", Json.texts(suspect.reasons()))
        .put("figures", Json.array(suspect.figures(), figure -> figure(map, figure)))
        .put("alike", Json.array(suspect.alike(), part -> Json.of(map.nameOf(part))));
  }

  private static Json figure(BoardMap map, NodeFigure figure) {
    return Json.object()
        .put("net", map.nameOf(Subject.of(figure.net())))
        .put("read", figure.read())
        .put("predicted", figure.predicted())
        .put("healthy", figure.healthy());
  }

  private static Json finding(BoardMap map, RuleFinding finding) {
    return Json.object()
        .put("code", finding.code())
        .put("severity", finding.severity().word())
        .put("subjects", Json.array(finding.subjects(), s -> Json.of(map.nameOf(s))))
        .put("parts", Json.array(finding.blames(), blame -> Json.of(map.nameOf(blame.part()))))
        .put("message", finding.message())
        .put("remedy", finding.remedy())
        .put("source", finding.source());
  }

  private static Json bracket(BoardMap map, FaultBracket bracket) {
    return Json.object()
        .put("lastGood", nets(map, bracket.lastGood()))
        .put("firstBad", nets(map, bracket.firstBad()))
        .put("byComplaint", bracket.byComplaint())
        .put("parts", Json.array(bracket.passed(), part -> Json.of(map.nameOf(part))));
  }

  private static Json nets(BoardMap map, List<NetId> nets) {
    return Json.array(nets, net -> Json.of(map.nameOf(Subject.of(net))));
  }

  private static Json compared(BoardMap map, TwinComparison comparison) {
    return Json.object()
        .put("net", map.nameOf(Subject.of(comparison.net())))
        .put("volts", comparison.volts())
        .put("twin", map.nameOf(Subject.of(comparison.twin())))
        .put("twinVolts", comparison.twinVolts())
        .put("difference", comparison.difference())
        .put("limit", comparison.limit())
        .put("flagged", comparison.flagged());
  }

  private static void print(
      PrintWriter out, UnitReadings unit, Suspects found, List<TwinComparison> comparisons) {
    BoardMap map = unit.map();
    out.println("Suspects:");
    line(out, "  " + basis(found));
    shown(found).stream().limit(PRINTED).forEach(suspect -> print(out, map, suspect));
    out.println("What the readings say:");
    for (RuleFinding finding : found.findings()) {
      line(out, "  %s: %s".formatted(finding.severity().word(), finding.message()));
      line(out, "      " + finding.remedy());
    }
    if (found.findings().isEmpty()) {
      out.println("  nothing yet");
    }
    if (comparisons.stream().anyMatch(TwinComparison::flagged)) {
      out.println("Different from the twin, in the order of the signal:");
      comparisons.stream()
          .filter(TwinComparison::flagged)
          .forEach(
              c ->
                  line(
                      out,
                      "  %s %s, %s %s"
                          .formatted(
                              map.nameOf(Subject.of(c.net())),
                              NetVoltage.text(c.volts()),
                              map.nameOf(Subject.of(c.twin())),
                              NetVoltage.text(c.twinVolts()))));
    }
    found
        .next()
        .ifPresentOrElse(
            next -> print(out, map, next), () -> out.println("Next: no place may be proposed."));
    zones(out, unit);
    out.println();
    Cautions.all()
        .forEach(caution -> wrapped(out, "%s. %s".formatted(caution.title(), caution.text())));
  }

  /** Where a zone is asked for, by the map and by what was read, in full with their outlines. */
  private static void zones(PrintWriter out, UnitReadings unit) {
    for (Hazards.Proposal zone : unit.hazards().hazards().proposals(unit.circuit())) {
      String outline =
          zone.outline().stream()
              .map(at -> String.format(Locale.ROOT, "%.0f,%.0f", at.x(), at.y()))
              .collect(Collectors.joining(" "));
      wrapped(
          out,
          "Zone asked for: %s on %s, round %s."
              .formatted(zone.kind().word(), zone.picture(), outline));
    }
  }

  private static void wrapped(PrintWriter out, String text) {
    WrappedText.print(out, NameRules.spelledOut(text), WIDTH);
  }

  /** What the shares rest on. */
  private static String basis(Suspects found) {
    return found.unsolved().isEmpty()
        ? String.format(
            Locale.ROOT,
            "Each usual failure was solved at the rails as read and weighed by the readings. None of"
                + " these, or the map is wrong: %.1f %%, shared out by place.",
            100 * found.unexplained())
        : "By rules alone; the circuit wasn't solved, since %s.".formatted(found.unsolved());
  }

  private static void print(PrintWriter out, BoardMap map, Suspect suspect) {
    line(
        out,
        String.format(
            Locale.ROOT,
            "  %-6s %5.1f %%  %s",
            map.nameOf(suspect.part()),
            100 * suspect.score(),
            String.join("; ", suspect.reasons())));
  }

  private static void print(PrintWriter out, BoardMap map, NextReading next) {
    line(out, "Next: %s, at %s: %s.".formatted(map.nameOf(next.at()), next.where(), next.why()));
  }

  private static void line(PrintWriter out, String text) {
    out.println(NameRules.spelledOut(text));
  }
}
