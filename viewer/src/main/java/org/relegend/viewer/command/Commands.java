package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Set;
import org.relegend.map.EditRefusedException;
import org.relegend.map.NameRules;
import org.relegend.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as a command line. */
@Command(
    name = "relegend",
    description = {
      "Ties schematic names and nets to places on photos of a board, and answers from there.",
      "With no command, or with a map's folder alone, it opens the viewer."
    },
    mixinStandardHelpOptions = true,
    version = "Relegend 0.1.0",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      OpenCommand.class,
      NewCommand.class,
      AddCommand.class,
      ImportCommand.class,
      NamesCommand.class,
      JoinedCommand.class,
      TwinCommand.class,
      TwinsCommand.class,
      PredictCommand.class,
      CheckCommand.class,
      JobCommand.class,
      SuspectsCommand.class,
      HazardsCommand.class,
      LineUpCommand.class,
      StraightenCommand.class,
      PackCommand.class,
      UnpackCommand.class,
      MergeCommand.class,
      TrustCommand.class,
      SheetCommand.class
    })
public final class Commands implements Runnable {
  private static final int HELP_WIDTH = 100;

  @Spec private CommandSpec spec = CommandSpec.create();

  private final ViewerOpener opener;

  private Commands(ViewerOpener opener) {
    this.opener = opener;
  }

  /**
   * Runs one command.
   *
   * @param arguments as given in the shell
   * @param opener opens the viewer for {@code open}
   * @return the exit code: {@link ExitCode#OK}, {@link ExitCode#DOES_NOT_HOLD} or {@link
   *     ExitCode#REFUSED}
   */
  public static int run(
      List<String> arguments, PrintWriter out, PrintWriter err, ViewerOpener opener) {
    CommandLine line =
        new CommandLine(new Commands(opener))
            .setOut(out)
            .setErr(err)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setUsageHelpAutoWidth(false)
            .setUsageHelpWidth(HELP_WIDTH)
            .setParameterExceptionHandler(Commands::wrongUse)
            .setExecutionExceptionHandler((failure, command, parsed) -> failed(failure, command));
    line.getSubcommands().values().forEach(Commands::flow);
    int code = line.execute(arguments.toArray(String[]::new));
    out.flush();
    err.flush();
    return code;
  }

  /**
   * Descriptions run on from line to line and are broken where the help's width says. Their first
   * sentence is what the list of commands shows.
   */
  private static void flow(CommandLine command) {
    UsageMessageSpec usage = command.getCommandSpec().usageMessage();
    usage.description(String.join(" ", usage.description()).split("(?<=\\.) +(?=\\p{Lu})", 2));
  }

  ViewerOpener opener() {
    return opener;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "no command given");
  }

  private static int wrongUse(ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    boolean noSuch =
        command.getParent() == null
            && wrong instanceof UnmatchedArgumentException unmatched
            && !unmatched.isUnknownOption();
    String message =
        noSuch
            ? noSuch(command, (UnmatchedArgumentException) wrong)
            : String.valueOf(wrong.getMessage());
    print(
        command,
        oneLine(message) + "; see " + command.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.REFUSED;
  }

  /** The command most like what was typed, or all of them. */
  private static String noSuch(CommandLine command, UnmatchedArgumentException wrong) {
    Set<String> names = command.getSubcommands().keySet();
    String typed = NameRules.printable(wrong.getUnmatched().get(0));
    List<String> like = wrong.getSuggestions().stream().filter(names::contains).limit(2).toList();
    return "there is no command \"%s\": %s"
        .formatted(
            typed,
            like.isEmpty()
                ? "it is one of " + String.join(", ", names)
                : "do you mean " + String.join(" or ", like) + "?");
  }

  private static int failed(Exception failure, CommandLine command) throws Exception {
    if (failure instanceof CommandFailure refusal) {
      print(command, oneLine(String.valueOf(failure.getMessage())));
      return refusal.code();
    }
    if (failure instanceof StoreException || failure instanceof EditRefusedException) {
      print(command, oneLine(String.valueOf(failure.getMessage())));
      return ExitCode.REFUSED;
    }
    throw failure;
  }

  private static void print(CommandLine command, String message) {
    command.getErr().println(command.getCommandSpec().qualifiedName() + ": " + message);
  }

  private static String oneLine(String message) {
    StringBuilder line = new StringBuilder();
    for (String part : message.strip().split("\\R")) {
      line.append(line.isEmpty() ? "" : " ").append(part.strip());
    }
    return NameRules.spelledOut(line.toString());
  }
}
