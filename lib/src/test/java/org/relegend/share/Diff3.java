package org.relegend.share;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Merging three texts line by line, as version control does: Myers, "An O(ND) Difference Algorithm
 * and Its Variations" (Algorithmica 1, 1986), and the rule of diff3: between lines that all three
 * share, what one side changed is taken.
 */
final class Diff3 {
  private Diff3() {}

  /** The merged text; none where both sides changed the same stretch in different ways. */
  static Optional<String> merged(String base, String mine, String theirs) {
    List<String> b = lines(base);
    List<String> m = lines(mine);
    List<String> t = lines(theirs);
    int[] inMine = matches(b, m);
    int[] inTheirs = matches(b, t);
    List<String> out = new ArrayList<>();
    int bAt = 0;
    int mAt = 0;
    int tAt = 0;
    for (int i = 0; i <= b.size(); i++) {
      boolean shared = i == b.size() || inMine[i] >= 0 && inTheirs[i] >= 0;
      if (!shared) {
        continue;
      }
      int mEnd = i == b.size() ? m.size() : inMine[i];
      int tEnd = i == b.size() ? t.size() : inTheirs[i];
      List<String> was = b.subList(bAt, i);
      List<String> ours = m.subList(mAt, mEnd);
      List<String> others = t.subList(tAt, tEnd);
      if (others.equals(was) || ours.equals(others)) {
        out.addAll(ours);
      } else if (ours.equals(was)) {
        out.addAll(others);
      } else {
        return Optional.empty();
      }
      if (i < b.size()) {
        out.add(b.get(i));
      }
      bAt = i + 1;
      mAt = mEnd + 1;
      tAt = tEnd + 1;
    }
    return Optional.of(String.join("\n", out));
  }

  private static List<String> lines(String text) {
    return List.of(text.split("\n", -1));
  }

  /** For each line of the first the one of the second that it is; -1 for those taken away. */
  static int[] matches(List<String> a, List<String> b) {
    int most = a.size() + b.size();
    int[] reached = new int[2 * most + 2];
    List<int[]> rounds = new ArrayList<>();
    for (int d = 0; d <= most; d++) {
      rounds.add(reached.clone());
      for (int k = -d; k <= d; k += 2) {
        boolean down = k == -d || k != d && reached[most + k - 1] < reached[most + k + 1];
        int x = down ? reached[most + k + 1] : reached[most + k - 1] + 1;
        while (x < a.size() && x - k < b.size() && a.get(x).equals(b.get(x - k))) {
          x++;
        }
        reached[most + k] = x;
        if (x >= a.size() && x - k >= b.size()) {
          return back(rounds, a.size(), b.size(), most);
        }
      }
    }
    throw new IllegalStateException("two texts always have a difference");
  }

  private static int[] back(List<int[]> rounds, int aSize, int bSize, int most) {
    int[] match = new int[aSize];
    Arrays.fill(match, -1);
    int x = aSize;
    int y = bSize;
    for (int d = rounds.size() - 1; d >= 0; d--) {
      int[] reached = rounds.get(d);
      int k = x - y;
      boolean down = k == -d || k != d && reached[most + k - 1] < reached[most + k + 1];
      int before = down ? k + 1 : k - 1;
      int startX = d == 0 ? 0 : reached[most + before];
      int startY = d == 0 ? 0 : startX - before;
      while (x > startX && y > startY) {
        match[--x] = --y;
      }
      x = startX;
      y = startY;
    }
    return match;
  }
}
