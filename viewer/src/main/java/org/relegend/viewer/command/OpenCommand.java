package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code open [FOLDER]}. */
@Command(name = "open", mixinStandardHelpOptions = true, description = "Opens the viewer.")
final class OpenCommand implements Callable<Integer> {
  @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "of a map or a job")
  private @Nullable Path folder;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    Commands commands = (Commands) spec.parent().userObject();
    return commands.opener().open(Optional.ofNullable(folder));
  }
}
