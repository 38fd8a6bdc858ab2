package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.relegend.map.EditRefusedException;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What all commands have in common: help, {@code --json}, and one way of printing and failing. */
@Command(mixinStandardHelpOptions = true)
abstract class JsonCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(names = "--json", description = "print exactly one JSON document instead of text")
  private boolean json;

  abstract CommandResult answer() throws CommandFailure, StoreException, EditRefusedException;

  @Override
  public final Integer call() throws CommandFailure, StoreException, EditRefusedException {
    CommandResult answer = answer();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(answer.json().get().toText());
    } else {
      answer.text().accept(out);
    }
    return answer.code();
  }

  /** Opens a map for changing it; refused where another program has it open. */
  final MapFolder openToChange(Path folder) throws StoreException, CommandFailure {
    MapFolder opened = MapFolder.open(folder);
    if (opened.readOnly()) {
      String why = String.join(" ", opened.notices());
      opened.close();
      throw new CommandFailure(why.isEmpty() ? folder + " can only be read" : why);
    }
    return withNotices(opened);
  }

  /** Opens a map for reading; what there is to know of its state goes to the error stream. */
  final MapFolder openToRead(Path folder) throws StoreException {
    return withNotices(MapFolder.openReadOnly(folder));
  }

  private MapFolder withNotices(MapFolder opened) {
    opened.notices().forEach(this::note);
    return opened;
  }

  /** Something to know beside the answer, on the error stream. */
  final void note(String notice) {
    spec.commandLine().getErr().println(spec.qualifiedName() + ": note: " + notice);
  }
}
