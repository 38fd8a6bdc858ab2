package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandsTest {
  private final Shell shell = new Shell();

  @TempDir private Path temp;

  @Test
  void wrongUse_isOneLineAndExitCode2() {
    Shell.Run run = shell.run("nosuch");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("nosuch").doesNotContain("\n").doesNotContain("at org.");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void noCommand_saysWhereTheHelpIs() {
    Shell.Run run = shell.run();
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).isEqualTo("relegend: no command given; see relegend --help");
  }

  @Test
  void help_namesEveryCommand_andEachHasItsOwn() {
    String help = shell.run("--help").out();
    for (String name :
        new String[] {"open", "new", "add", "import", "names", "joined", "twin", "check"}) {
      assertThat(help).contains(name);
      assertThat(shell.run(name, "--help").out()).startsWith("Usage: relegend " + name);
    }
  }

  /** The list gives each command one whole sentence, and descriptions are broken evenly. */
  @Test
  void help_hasWholeSentences() {
    String help = shell.run("--help").out();
    String list = help.substring(help.indexOf("Commands:"));
    List<String> lines = List.of(list.split("\\n(?=  [a-z])", -1));
    assertThat(lines).hasSizeGreaterThan(18);
    assertThat(lines.subList(1, lines.size())).allMatch(line -> line.strip().endsWith("."));
    assertThat(shell.run("lineup", "--help").out().lines())
        .allMatch(line -> line.length() <= 100)
        .noneMatch(line -> line.equals("error."));
  }

  @Test
  void noSuchCommand_isToldWithTheNearestOrAll() {
    assertThat(shell.run("hazard").err().strip())
        .startsWith("relegend: there is no command \"hazard\": do you mean hazards")
        .doesNotContain("\n");
    Shell.Run run = shell.run("qqqq", "x");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip())
        .contains("\"qqqq\"", "import", "sheet")
        .doesNotContain("index", "\n");
  }

  @Test
  void open_goesToTheViewer() {
    assertThat(shell.run("open", temp).code()).isZero();
    assertThat(shell.opened).hasSize(1);
    assertThat(shell.opened.get(0)).contains(temp);
  }

  @Test
  void new_makesAMap_onlyOnce() {
    Path folder = temp.resolve("a/b");
    assertThat(shell.run("new", folder, "--title", "Levelling amplifier").code()).isZero();
    Shell.Run again = shell.run("new", folder, "--title", "Other");
    assertThat(again.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(again.err().strip()).contains(folder.toString()).doesNotContain("\n");
  }

  @Test
  void new_titleWithADirectionMark_isRefusedAndNothingMade() throws IOException {
    Path folder = temp.resolve("m");
    Shell.Run run = shell.run("new", folder, "--title", "a\u202eb");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err()).contains("U+202E").doesNotContain("\u202e");
    assertThat(Files.exists(folder)).isFalse();
  }

  @Test
  void aMapThatCantBeRead_isAnsweredFromItsBackup_andThatIsTold() throws IOException {
    Path folder = temp.resolve("m");
    shell.run("new", folder, "--title", "T");
    Files.move(folder.resolve("map.json"), folder.resolve("map.json.bak"));
    Files.writeString(folder.resolve("map.json"), "{\"format\": 1,");
    Shell.Run run = shell.run("check", folder, "--json");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("{");
    assertThat(run.err().strip())
        .startsWith("relegend check: note: map.json can't be read")
        .contains("map.json.bak", "ends in the middle")
        .doesNotContain("\n");
    Files.delete(folder.resolve("map.json.bak"));
    Shell.Run without = shell.run("check", folder, "--json");
    assertThat(without.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(without.out()).isEmpty();
    assertThat(without.err().strip()).contains("ends in the middle").doesNotContain("\n");
  }
}
