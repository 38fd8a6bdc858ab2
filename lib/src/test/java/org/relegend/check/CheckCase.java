package org.relegend.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.relegend.finding.Finding;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Subject;

/** What the tests of all checks have in common. */
final class CheckCase {
  private CheckCase() {}

  static List<Finding> inspect(Check check, BoardMap map) {
    return inspect(check, map, PictureFiles.asRecorded());
  }

  static List<Finding> inspect(Check check, BoardMap map, PictureFiles files) {
    List<Finding> findings = check.inspect(CheckContext.of(map, files));
    assertThat(findings).allSatisfy(finding -> assertThat(finding.code()).isEqualTo(check.code()));
    return findings;
  }

  /** The one finding there is. */
  static Finding only(Check check, BoardMap map) {
    List<Finding> findings = inspect(check, map);
    assertThat(findings).hasSize(1);
    return findings.get(0);
  }

  static void assertQuiet(Check check, BoardMap map) {
    assertThat(inspect(check, map)).isEmpty();
  }

  /** The finding's own fix leaves nothing to find. */
  static BoardMap assertFixed(Check check, BoardMap map, Finding finding)
      throws EditRefusedException {
    BoardMap mended = finding.fix().orElseThrow().applyTo(map);
    assertQuiet(check, mended);
    return mended;
  }

  static List<String> subjects(Finding finding) {
    return finding.subjects().stream().map(Subject::toString).toList();
  }
}
