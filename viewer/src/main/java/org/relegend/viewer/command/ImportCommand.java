package org.relegend.viewer.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.relegend.map.EditRefusedException;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.table.ImportOptions;
import org.relegend.table.ImportPlan;
import org.relegend.table.ImportSummary;
import org.relegend.table.TableException;
import org.relegend.table.TableImport;
import org.relegend.table.TableSort;
import org.relegend.table.TableSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import FOLDER --parts parts.csv --pins pins.csv [--nets nets.csv] ...}. */
@Command(
    name = "import",
    description = {
      "Reads tables into a map: parts, joined pins, nets, placements.",
      "Columns go by their names; see the README for them. Tables with an error change nothing,",
      "and tables read a second time change nothing either."
    })
final class ImportCommand extends JsonCommand {
  @Parameters(paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--parts",
      paramLabel = "FILE",
      description = "designator,kind,value,package,channel,board")
  private @Nullable Path parts;

  @Option(names = "--pins", paramLabel = "FILE", description = "net,part,pin,role,section")
  private @Nullable Path pins;

  @Option(
      names = "--nets",
      paramLabel = "FILE",
      description = "net,volts,nature,reference,channel,note")
  private @Nullable Path nets;

  @Option(names = "--placements", paramLabel = "FILE", description = "target,picture,x,y,evidence")
  private @Nullable Path placements;

  @Option(names = "--replace", description = "where a table contradicts the map, the table wins")
  private boolean replace;

  @Mixin private AuthorOption author = new AuthorOption();

  @Mixin private KindsOption kinds = new KindsOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    Map<TableSort, TableSource> sources = new EnumMap<>(TableSort.class);
    try (MapFolder opened = openToChange(folder)) {
      read(sources, TableSort.PARTS, parts);
      read(sources, TableSort.PINS, pins);
      read(sources, TableSort.NETS, nets);
      read(sources, TableSort.PLACEMENTS, placements);
      if (sources.isEmpty()) {
        throw new CommandFailure(
            "no table given: name one with --parts, --pins, --nets or --placements");
      }
      ImportOptions options =
          new ImportOptions(author.author(), Clock.systemUTC().instant(), replace, kinds.kinds());
      ImportPlan plan = TableImport.plan(opened.map(), sources, options);
      if (!plan.edit().steps().isEmpty()) {
        opened.save(plan.edit().applyTo(opened.map()));
      }
      return result(plan);
    } catch (TableException wrong) {
      throw new CommandFailure(wrong.inOneLine());
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private static void read(Map<TableSort, TableSource> sources, TableSort sort, @Nullable Path file)
      throws TableException {
    if (file != null) {
      sources.put(sort, TableSource.of(file));
    }
  }

  private static CommandResult result(ImportPlan plan) {
    ImportSummary summary = plan.summary();
    return CommandResult.ok(
        () ->
            Json.object()
                .put("parts", counts(summary.partsAdded(), summary.partsChanged()))
                .put("nets", counts(summary.netsAdded(), summary.netsChanged()))
                .put("pins", summary.pinsJoined())
                .put("placements", counts(summary.placementsAdded(), summary.placementsChanged()))
                .put("warnings", Json.texts(plan.warnings())),
        out -> {
          plan.warnings().forEach(warning -> out.println("note: " + warning));
          out.println(summary);
        });
  }

  private static Json counts(int added, int changed) {
    return Json.object().put("added", added).put("changed", changed);
  }
}
