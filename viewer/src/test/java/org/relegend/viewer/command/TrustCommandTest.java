package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Who says what in the demo, and its twelve pins that the drawing has elsewhere. */
class TrustCommandTest {
  private static final Path DEMO =
      Path.of(System.getProperty("relegend.root", ".."), "demo-data", "map");

  private final Shell shell = new Shell();

  private JsonNode json(Object... more) {
    Object[] words = new Object[more.length + 3];
    words[0] = "trust";
    words[1] = DEMO;
    words[2] = "--json";
    System.arraycopy(more, 0, words, 3, more.length);
    Shell.Run run = shell.run(words);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).as("the drawing alone disagrees").isZero();
    return Schemas.valid("trust", run.out());
  }

  @Test
  void trust_tellsWhoSaysWhat_andWhereDrawingAndBoardDiffer() {
    JsonNode all = json();
    assertThat(all.get("authors")).hasSize(1);
    assertThat(all.get("statements")).hasSizeGreaterThan(1000);
    assertThat(all.get("disagreements")).hasSize(12);
    JsonNode first = all.get("disagreements").get(0);
    assertThat(first.get("kind").asText()).isEqualTo("drawing");
    assertThat(first.get("subject").asText()).isEqualTo("U102.1");
    assertThat(first.get("positions").get(1).get("by").get(0).get("evidence").asText())
        .isEqualTo("measured");
  }

  @Test
  void filters_narrowWhatIsTold() {
    int all = json().get("statements").size();
    int beeped = json("--least", "beeped").get("statements").size();
    assertThat(beeped).isPositive().isLessThan(all / 2);
    assertThat(json("--by", "somebody else").get("statements")).isEmpty();
    assertThat(json("--since", "2026-03-02").get("statements")).hasSize(all);
    assertThat(json("--since", "2026-03-03").get("statements")).isEmpty();
  }

  @Test
  void text_listsWhatFits_andWrongWordsAreOneLine() {
    Shell.Run run = shell.run("trust", DEMO, "--least", "measured", "--list");
    assertThat(run.out()).contains("measured by mk, 2026-03-02").contains("drawing: A_DOUT");
    for (String option : new String[] {"--least", "--since"}) {
      Shell.Run wrong = shell.run("trust", DEMO, option, "nonsense");
      assertThat(wrong.code()).isEqualTo(ExitCode.REFUSED);
      assertThat(wrong.err().strip()).contains(option).contains("nonsense").doesNotContain("\n");
    }
  }
}
