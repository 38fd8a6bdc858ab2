package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code sheet} on the demo map as it is shipped. */
@Tag("long")
class SheetCommandTest {
  private static final Path ROOT = Path.of(System.getProperty("relegend.root", ".."));
  private static final Path MAP = ROOT.resolve("demo-data/map");

  private final Shell shell = new Shell();

  @TempDir private Path temp;

  @Test
  void aNode_isPrinted_toTheSameBytesForTheSameDate() throws IOException {
    Path file = temp.resolve("a.pdf");
    Object[] words = {
      "sheet", MAP, file, "--node", "a_att", "--node", "R106.1", "--date", "2026-03-04", "--json"
    };
    Shell.Run run = shell.run(words);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    JsonNode json = Schemas.valid("sheet", run.out());
    assertThat(json.get("pages").asInt()).isEqualTo(4); // cautions on two, dangers, the one node
    assertThat(json.get("troubles")).isEmpty();
    byte[] first = Files.readAllBytes(file);
    assertThat(new String(first, 0, 5, StandardCharsets.ISO_8859_1)).isEqualTo("%PDF-");
    assertThat(shell.run(words).code()).isZero();
    assertThat(Files.readAllBytes(file)).isEqualTo(first);
  }

  @Test
  void theDemosJob_isPrintedForShopAndCustomer() throws IOException {
    Path job = ROOT.resolve("demo-data/job");
    Path shop = temp.resolve("shop.pdf");
    Path customer = temp.resolve("customer.pdf");
    assertThat(shell.run("sheet", job, shop, "--json").code()).isZero();
    Shell.Run run = shell.run("sheet", job, customer, "--for", "customer", "--paper", "letter");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(Files.size(shop)).isGreaterThan(Files.size(customer));
    refused("--node", "sheet", job, temp.resolve("n.pdf"), "--node", "A_ATT");
    refused("--for", "sheet", MAP, temp.resolve("n.pdf"), "--for", "shop");
    refused("owner", "sheet", job, temp.resolve("n.pdf"), "--for", "owner");
  }

  @Test
  void wrongUse_isOneLine_andNothingIsWritten() throws IOException {
    Path file = temp.resolve("a.pdf");
    refused("a5", "sheet", MAP, file, "--paper", "a5");
    refused("4.3.26", "sheet", MAP, file, "--date", "4.3.26");
    refused("A_ATT", "sheet", MAP, file, "--node", "A_ATTT"); // with what is spelt alike
    refused(temp.toString(), "sheet", temp, file);
    refused("no", "sheet", MAP, temp.resolve("no/a.pdf"), "--node", "A_ATT");
    assertThat(file).doesNotExist();
    Path notes = Files.writeString(temp.resolve("notes.pdf"), "mine");
    refused("notes.pdf", "sheet", MAP, notes, "--node", "A_ATT");
    assertThat(notes).hasContent("mine");
  }

  private void refused(String telling, Object... words) {
    Shell.Run run = shell.run(words);
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().strip()).contains(telling).doesNotContain("\n");
  }
}
