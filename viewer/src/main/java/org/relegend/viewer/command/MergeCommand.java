package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.relegend.map.BoardMap;
import org.relegend.map.Clash;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Picture;
import org.relegend.share.ClashDecisions;
import org.relegend.share.ClashText;
import org.relegend.share.MapCopy;
import org.relegend.share.Merge;
import org.relegend.share.MergeResult;
import org.relegend.share.PackReader;
import org.relegend.share.SamePhotos;
import org.relegend.share.ShareException;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code merge BASE MINE THEIRS --out FOLDER}, or {@code merge MAP} to decide what is left. */
@Command(
    name = "merge",
    description = {
      "Brings together what two people made of one map.",
      "Give merge BASE MINE THEIRS --out FOLDER.",
      "BASE is the map both began with, or the pack that was given away; a single - where there is",
      "none. What both changed",
      "differently is a clash: it is listed, kept in the map with both versions, and mine goes on",
      "until somebody decides. With one folder, merge MAP lists its clashes and decides them.",
      "Exit code 1 where clashes are left."
    })
final class MergeCommand extends JsonCommand {
  @Parameters(
      arity = "1..3",
      paramLabel = "FOLDER",
      description = "BASE MINE THEIRS, or one map with clashes")
  private List<Path> folders = List.of();

  @Option(names = "--out", paramLabel = "FOLDER", description = "a new folder for the merged map")
  private @Nullable Path out;

  @Option(
      names = "--mine",
      paramLabel = "N",
      description = "decide clash N (its number in the list, or its name) as mine has it")
  private List<String> mine = new ArrayList<>();

  @Option(names = "--theirs", paramLabel = "N", description = "decide clash N as theirs has it")
  private List<String> theirs = new ArrayList<>();

  /** A merged map, and what of its pictures' files was not at hand. */
  private record Outcome(BoardMap map, List<Picture> missing, List<String> taken) {}

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    if (folders.size() == 1 && out == null) {
      return result(decideIn(folders.get(0)));
    }
    Path target = out;
    if (folders.size() != 3 || target == null) {
      throw new CommandFailure(
          "name BASE, MINE and THEIRS and a new folder with --out, or one map alone");
    }
    return result(mergeInto(target));
  }

  private Outcome decideIn(Path folder)
      throws CommandFailure, StoreException, EditRefusedException {
    if (mine.isEmpty() && theirs.isEmpty()) {
      try (MapFolder opened = openToRead(folder)) {
        return new Outcome(opened.map(), List.of(), List.of());
      }
    }
    try (MapFolder opened = openToChange(folder)) {
      BoardMap decided = decided(opened.map());
      opened.save(decided);
      return new Outcome(decided, List.of(), List.of());
    }
  }

  private Outcome mergeInto(Path target)
      throws CommandFailure, StoreException, EditRefusedException {
    try (MapFolder ours = openToRead(folders.get(1));
        MapFolder others = openToRead(folders.get(2))) {
      BoardMap result = decided(merged(ours, others).map());
      return new Outcome(
          result,
          MapCopy.write(result, target, List.of(ours, others)),
          List.of(
              "From theirs: " + MergeSummary.text(ours.map(), result),
              "From mine: " + MergeSummary.text(others.map(), result)));
    }
  }

  private MergeResult merged(MapFolder ours, MapFolder others)
      throws CommandFailure, StoreException {
    if (folders.get(0).toString().equals("-")) {
      return Merge.of(ours.map(), SamePhotos.matched(ours, others.map()));
    }
    try {
      return Merge.of(base(folders.get(0)), ours.map(), others.map());
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure(
          unfit.getMessage() + "; put - in the place of BASE to merge them all the same");
    }
  }

  /** The map that both began with: a folder, or the pack that was given away. */
  private BoardMap base(Path path) throws CommandFailure, StoreException {
    if (Files.isRegularFile(path)) {
      try (PackReader pack = PackReader.open(path)) {
        return pack.map();
      } catch (ShareException refused) {
        throw new CommandFailure(String.valueOf(refused.getMessage()));
      }
    }
    try (MapFolder base = openToRead(path)) {
      return base.map();
    }
  }

  private BoardMap decided(BoardMap map) throws CommandFailure, EditRefusedException {
    Map<Clash, ClashDecisions.Side> decisions = new LinkedHashMap<>();
    for (String name : mine) {
      decisions.put(clash(map, name), ClashDecisions.Side.MINE);
    }
    for (String name : theirs) {
      if (decisions.put(clash(map, name), ClashDecisions.Side.THEIRS) != null) {
        throw new CommandFailure("clash " + name + " can't be decided both ways");
      }
    }
    BoardMap result = map;
    for (Map.Entry<Clash, ClashDecisions.Side> decision : decisions.entrySet()) {
      result = ClashDecisions.edit(result, decision.getKey(), decision.getValue()).applyTo(result);
    }
    return result;
  }

  private static Clash clash(BoardMap map, String name) throws CommandFailure {
    int number = 1;
    for (Clash clash : map.clashes()) {
      if (name.equals(Integer.toString(number))
          || name.equals(clash.key().toString())
          || name.equals(ClashText.about(map, clash))) {
        return clash;
      }
      number++;
    }
    throw new CommandFailure(
        "there is no clash \"%s\": name one of the %d by its number"
            .formatted(name, map.clashes().size()));
  }

  private static CommandResult result(Outcome outcome) {
    BoardMap map = outcome.map();
    return new CommandResult(
        map.clashes().isEmpty() ? ExitCode.OK : ExitCode.DOES_NOT_HOLD,
        () ->
            Json.object()
                .put("id", map.id())
                .put("clashes", clashes(map))
                .put("missing", Json.array(outcome.missing(), p -> Json.of(p.id().text()))),
        out -> print(out, outcome));
  }

  private static List<Json> clashes(BoardMap map) {
    List<Json> list = new ArrayList<>();
    for (Clash clash : map.clashes()) {
      list.add(
          Json.object()
              .put("clash", clash.key().toString())
              .put("about", ClashText.about(map, clash))
              .put("mine", ClashText.version(map, clash, ClashDecisions.Side.MINE))
              .put("theirs", ClashText.version(map, clash, ClashDecisions.Side.THEIRS)));
    }
    return list;
  }

  private static void print(PrintWriter out, Outcome outcome) {
    BoardMap map = outcome.map();
    outcome.taken().forEach(out::println);
    int number = 1;
    for (Clash clash : map.clashes()) {
      out.println(number++ + ". " + ClashText.about(map, clash));
      out.println("   mine:   " + ClashText.version(map, clash, ClashDecisions.Side.MINE));
      out.println("   theirs: " + ClashText.version(map, clash, ClashDecisions.Side.THEIRS));
    }
    out.println(
        map.clashes().isEmpty()
            ? "No clash is left."
            : "Clashes left: %d. Decide each with --mine N or --theirs N."
                .formatted(map.clashes().size()));
    outcome
        .missing()
        .forEach(p -> out.println("The file of %s is in neither map.".formatted(p.caption())));
  }
}
