package org.relegend.viewer.command;

import java.io.PrintWriter;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.relegend.store.Json;

/**
 * What a command has found, told either way.
 *
 * @param code the exit code
 * @param json the one document of {@code --json}; its fixed keys are in the command's schema
 * @param text the same for people
 */
record CommandResult(int code, Supplier<Json> json, Consumer<PrintWriter> text) {
  static CommandResult ok(Supplier<Json> json, Consumer<PrintWriter> text) {
    return new CommandResult(ExitCode.OK, json, text);
  }
}
