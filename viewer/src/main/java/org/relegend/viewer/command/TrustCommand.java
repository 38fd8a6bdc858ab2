package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.share.Attribution;
import org.relegend.share.Disagreement;
import org.relegend.share.Disagreements;
import org.relegend.share.Statement;
import org.relegend.share.TrustReport;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code trust FOLDER}. */
@Command(
    name = "trust",
    description = {
      "Tells who says what in a map, when and on which evidence.",
      "Also what is said in two ways: undecided clashes, pins at two nodes, things at two places, two twins, drawing against board.",
      "Options pick who, how good the evidence is at least, and from when on.",
      "Exit code 1 where two people's versions, nodes, places or twins disagree."
    })
final class TrustCommand extends JsonCommand {
  @Parameters(paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Option(names = "--by", paramLabel = "ALIAS", description = "only what this one stands for")
  private @Nullable String by;

  @Option(
      names = "--least",
      paramLabel = "EVIDENCE",
      description = "evidence that is at least so good: measured, beeped, seen, matched, …")
  private @Nullable String least;

  @Option(
      names = "--since",
      paramLabel = "DATE",
      description = "only what was said on that day or later, as 2026-03-01")
  private @Nullable String since;

  @Option(names = "--list", description = "every place and pin that fits, a line each")
  private boolean list;

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    TrustReport.Filter filter = new TrustReport.Filter(Optional.ofNullable(by), least(), since());
    try (MapFolder opened = openToRead(folder)) {
      BoardMap map = opened.map();
      List<Statement> fitting =
          Statement.of(map).stream().filter(statement -> statement.fits(filter)).toList();
      boolean all = by == null && least == null && since == null;
      List<Disagreement> disagreements =
          Disagreements.of(map).stream().filter(one -> all || one.fits(filter)).toList();
      boolean open =
          disagreements.stream().anyMatch(one -> one.kind() != Disagreement.Kind.DRAWING);
      return new CommandResult(
          open ? ExitCode.DOES_NOT_HOLD : ExitCode.OK,
          () -> json(map, fitting, disagreements),
          out -> print(out, map, fitting, disagreements));
    }
  }

  private Optional<Evidence> least() throws CommandFailure {
    String word = least;
    try {
      return word == null ? Optional.empty() : Optional.of(Evidence.of(word));
    } catch (IllegalArgumentException unknown) {
      throw new CommandFailure("--least: " + unknown.getMessage());
    }
  }

  private Optional<Instant> since() throws CommandFailure {
    String day = since;
    try {
      return day == null
          ? Optional.empty()
          : Optional.of(LocalDate.parse(day).atStartOfDay(ZoneOffset.UTC).toInstant());
    } catch (DateTimeException unreadable) {
      throw new CommandFailure("--since: \"%s\" is no day: write 2026-03-01".formatted(day));
    }
  }

  private static Json json(
      BoardMap map, List<Statement> fitting, List<Disagreement> disagreements) {
    return Json.object()
        .put("authors", Json.array(TrustReport.of(map).authors(), TrustCommand::author))
        .put("statements", Json.array(fitting, TrustCommand::statement))
        .put("disagreements", Json.array(disagreements, one -> disagreement(map, one)));
  }

  /** One author with how often they stand for something, by evidence. */
  static Json author(TrustReport.Author author) {
    Json.Obj evidence = Json.object();
    for (var stated : author.counts().entrySet()) {
      evidence = evidence.put(stated.getKey().word(), (long) stated.getValue());
    }
    return Json.object()
        .put("author", author.name())
        .put("said", evidence)
        .put("first", author.first().toString())
        .put("last", author.last().toString());
  }

  private static Json statement(Statement statement) {
    Json.Obj json = Json.object().put("says", statement.says());
    if (statement.picture().isPresent()) {
      json = json.put("picture", statement.picture().get().text());
    }
    return json.put("by", by(statement.by()));
  }

  private static List<Json> by(List<Attestation> by) {
    return Json.array(
            by,
            attestation ->
                Json.object()
                    .put("evidence", attestation.evidence().word())
                    .put("author", attestation.author())
                    .put("at", attestation.at().toString()))
        .values();
  }

  /** One disagreement, with its ways. */
  static Json disagreement(BoardMap map, Disagreement one) {
    Json.Obj json = Json.object().put("kind", one.kind().word()).put("about", one.about());
    if (one.subject().isPresent()) {
      json = json.put("subject", map.nameOf(one.subject().get()));
    }
    return json.put(
        "positions",
        Json.array(
            one.positions(),
            position -> Json.object().put("says", position.says()).put("by", by(position.by()))));
  }

  private void print(
      PrintWriter out, BoardMap map, List<Statement> fitting, List<Disagreement> disagreements) {
    TrustReport.of(map).lines().forEach(out::println);
    if (by != null || least != null || since != null) {
      out.println("fit what was asked for: %d".formatted(fitting.size()));
    }
    if (list) {
      TextTable table = new TextTable();
      fitting.forEach(one -> table.row(one.says(), Attribution.text(one.by())));
      table.print(out, "  ");
    }
    print(out, disagreements);
  }

  /** Each with its ways side by side. */
  static void print(PrintWriter out, List<Disagreement> disagreements) {
    out.println(
        disagreements.isEmpty()
            ? "Nothing is said in two ways."
            : "Said in two ways: %d".formatted(disagreements.size()));
    TextTable table = new TextTable();
    for (Disagreement one : disagreements) {
      String about = one.about();
      for (Disagreement.Position position : one.positions()) {
        table.row(about, position.says(), Attribution.text(position.by()));
        about = "";
      }
    }
    table.print(out, "  ");
  }
}
