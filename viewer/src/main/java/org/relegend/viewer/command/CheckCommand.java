package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.relegend.check.CheckContext;
import org.relegend.check.Checks;
import org.relegend.check.PictureFiles;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.BoardMap;
import org.relegend.map.MapIndex;
import org.relegend.map.NameRules;
import org.relegend.store.Digests;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code check FOLDER}. */
@Command(
    name = "check",
    description = {
      "Tells all findings on a map, each with what to do.",
      "Exit code 1 where one of them is an error; warnings and information leave it 0."
    })
final class CheckCommand extends JsonCommand {
  @Parameters(paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Mixin private KindsOption kinds = new KindsOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    MapFolder opened = openToRead(folder);
    BoardMap map = opened.map();
    PictureFiles files = picture -> digest(opened.fileOf(picture));
    List<Finding> findings =
        Checks.inspect(new CheckContext(new MapIndex(map), kinds.kinds(), files));
    boolean holds = findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
    return new CommandResult(
        holds ? ExitCode.OK : ExitCode.DOES_NOT_HOLD,
        () -> json(map, findings),
        out -> print(out, findings));
  }

  private static Optional<String> digest(Path file) {
    if (!Files.isReadable(file)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Digests.sha256(file));
    } catch (StoreException unreadable) {
      return Optional.empty();
    }
  }

  private static Json json(BoardMap map, List<Finding> findings) {
    return Json.object()
        .put(
            "findings",
            Json.array(
                findings,
                finding ->
                    Json.object()
                        .put("code", finding.code())
                        .put("severity", finding.severity().word())
                        .put(
                            "subjects", Json.array(finding.subjects(), s -> Json.of(map.nameOf(s))))
                        .put("message", finding.message())
                        .put("remedy", finding.remedy())));
  }

  private static void print(PrintWriter out, List<Finding> findings) {
    for (Finding finding : findings) {
      out.println(
          NameRules.spelledOut("%s: %s".formatted(finding.severity().word(), finding.message())));
      out.println(NameRules.spelledOut("  " + finding.remedy()));
    }
    String counts = "";
    for (Severity severity : Severity.values()) {
      long count = findings.stream().filter(f -> f.severity() == severity).count();
      counts +=
          String.format(
              Locale.ROOT, "%s%,d %s", counts.isEmpty() ? "" : ", ", count, severity.word());
    }
    out.println(counts);
  }
}
