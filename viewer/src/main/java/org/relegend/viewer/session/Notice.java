package org.relegend.viewer.session;

import java.util.List;

/**
 * One sentence for the status line, without its words: those are the window's business.
 *
 * @param arguments names, as text, and numbers that stand in the sentence
 */
public record Notice(Kind kind, List<Object> arguments) {
  /** What is said. */
  public enum Kind {
    PROMPT_PLACE,
    PROMPT_PINS,
    PROMPT_TRACE,
    PROMPT_ZONE,
    PROMPT_MEASURE,
    PLACED,
    PLACED_NEW,
    PLACED_VALUE,
    PLACED_VALUE_CHANGED,
    PLACED_PINS,
    FIRST_PIN,
    MOVED,
    MOVED_SEVERAL,
    TAKEN_AWAY,
    CONFIRMED,
    PAIR_HALF,
    PAIR_SET,
    PAIR_MOVED,
    PAIR_TAKEN_AWAY,
    PAIR_CHOSEN,
    LINED_UP,
    UNIT_LINED_UP,
    MEASURE_SECOND,
    MEASURED_BY_PART,
    MEASURED_BY_DISTANCE,
    CORNERS_FIRST,
    CORNER,
    STRAIGHTENED,
    JOINED,
    ALREADY_JOINED,
    NETS_JOINED,
    PIN_MOVED,
    PIN_LEFT,
    TRACING,
    LINE_TRACED,
    ZONE_CORNER,
    ZONE_DRAWN,
    ZONE_CHANGED,
    ZONE_REMOVED,
    ZONE_CARRIED(true),
    NO_ZONE(true),
    ZONE_TOO_SMALL,
    READ,
    CONDITION,
    PRINTED,
    TWINS_SAID,
    TWINS_ACCEPTED,
    TWINS_REJECTED,
    TWIN_FOLLOWS,
    GHOST_ACCEPTED,
    GHOSTS_ACCEPTED,
    GHOST_REJECTED,
    ALL_REJECTED,
    ENTRY_FITS,
    ENTRY_VALUE,
    ENTRY_DOUBT,
    ENTRY_KIND,
    ENTRY_MAINS,
    ENTRY_TAKEN,
    RENAMED,
    REMOVED,
    UNDONE,
    REDONE,
    NOTHING_TO_UNDO(true),
    NOTHING_TO_REDO(true),
    NOTHING_HERE(true),
    NOT_FOUND(true),
    NO_NAME_TYPED(true),
    NO_PACKAGE(true),
    PIN_OR_VALUE(true),
    NO_VALUE(true),
    NAME_TAKEN(true),
    NET_NAME_TAKEN(true),
    ENTRY_NATURE(true),
    NOT_PLACED_YET(true),
    NO_TWIN(true),
    NO_TWIN_CHANNEL(true),
    NO_TWIN_ALONE(true),
    TWINS_UNLIKE(true),
    TWINS_CLASH(true),
    NOTHING_PROPOSED(true),
    NO_DIFFERENCE(true),
    NO_OTHER_SIDE(true),
    NOTHING_CHOSEN(true),
    NOTHING_TO_MEND(true),
    PINS_UNKNOWN(true),
    MEASURED_ON_PHOTOS(true),
    NO_DISTANCE(true),
    STRAIGHTENED_PHOTOS(true),
    NO_SIZE(true),
    NOT_STRAIGHTENED(true),
    NO_OTHER_PHOTO(true),
    NO_OTHER_PAGE(true),
    NOT_LINED_UP(true),
    CARRIED_STAYS(true),
    UNIT_PHOTO(true),
    NO_UNIT_PHOTO(true),
    NO_JOB(true),
    JOB_READ_ONLY(true),
    READ_ONLY(true),
    REFUSED(true);

    private final boolean refusal;

    Kind() {
      this(false);
    }

    Kind(boolean refusal) {
      this.refusal = refusal;
    }

    /** Whether it says what to do next with the tool that was taken. */
    public boolean isPrompt() {
      return this == CORNERS_FIRST || name().startsWith("PROMPT_");
    }

    /** Whether something asked for did not happen. */
    public boolean isRefusal() {
      return refusal;
    }
  }

  public Notice {
    arguments = List.copyOf(arguments);
  }

  public static Notice of(Kind kind, Object... arguments) {
    return new Notice(kind, List.of(arguments).stream().map(Notice::numberOrText).toList());
  }

  private static Object numberOrText(Object argument) {
    return argument instanceof Integer ? argument : argument.toString();
  }
}
