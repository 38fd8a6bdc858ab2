package org.relegend.hazard;

import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;

/** How long something takes, as people say it; never less than it is. */
public final class WaitTime {
  private static final int MINUTE = 60;
  private static final int HOUR = 60 * MINUTE;
  private static final int DAY = 24 * HOUR;

  private WaitTime() {}

  /** Such as "169 ms", "14.8 s", "5 min", "10 h 20 min", "3 d 2 h": the last figure rounded up. */
  public static String text(double seconds) {
    if (seconds < 2 * MINUTE) {
      return new Amount(Quantity.TIME, seconds).text(3);
    }
    if (seconds < HOUR) {
      return (long) Math.ceil(seconds / MINUTE) + " min";
    }
    return seconds < DAY
        ? pair(Math.ceil(seconds / MINUTE), HOUR / MINUTE, " h", " min")
        : pair(Math.ceil(seconds / HOUR), DAY / HOUR, " d", " h");
  }

  private static String pair(double count, int many, String large, String small) {
    long whole = (long) count / many;
    long rest = (long) count % many;
    return whole + large + (rest == 0 ? "" : " " + rest + small);
  }
}
