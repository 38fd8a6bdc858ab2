package org.relegend.viewer.control;

import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.relegend.viewer.session.Mode;

/**
 * Everything the window can be told to do, each with its menu and its key; the menus and the sheet
 * of keys are made from this list. A key without Ctrl or Alt does nothing while text is typed.
 */
public enum UserAction {
  NEW(Group.FILE, "ctrl N"),
  OPEN(Group.FILE, "ctrl O"),
  DEMO(Group.FILE, ""),
  NEW_WINDOW(Group.FILE, "ctrl shift N"),
  ADD_PAGE(Group.FILE, "ctrl shift P"),
  ADD_PHOTO(Group.FILE, "ctrl shift F"),
  NEW_JOB(Group.FILE, "ctrl J"),
  PRINT(Group.FILE, "ctrl P"),
  PACK(Group.FILE, ""),
  SAVE(Group.FILE, "ctrl S"),
  CLOSE(Group.FILE, "ctrl W"),
  QUIT(Group.FILE, "ctrl Q"),
  UNDO(Group.EDIT, "ctrl Z"),
  REDO(Group.EDIT, "ctrl Y"),
  CONFIRM(Group.EDIT, "C"),
  ACCEPT_ALL(Group.EDIT, "shift C"),
  TAKE_AWAY(Group.EDIT, "DELETE"),
  REJECT_ALL(Group.EDIT, "shift DELETE"),
  NUDGE_LEFT(Group.EDIT, "ctrl LEFT"),
  NUDGE_RIGHT(Group.EDIT, "ctrl RIGHT"),
  NUDGE_UP(Group.EDIT, "ctrl UP"),
  NUDGE_DOWN(Group.EDIT, "ctrl DOWN"),
  CHANGE(Group.EDIT, "F2"),
  CHANGE_PART(Group.EDIT, "shift F2"),
  REMOVE(Group.EDIT, "ctrl DELETE"),
  CHANGE_ZONE(Group.EDIT, "shift Z"),
  REMOVE_ZONE(Group.EDIT, ""),
  AUTHOR(Group.EDIT, ""),
  BACK(Group.MARK, "ESCAPE"),
  PLACE(Group.MARK, "P"),
  PINS(Group.MARK, "shift P"),
  TRACE(Group.MARK, "N"),
  TWIN_IS(Group.MARK, "shift T"),
  ZONE(Group.MARK, "Z"),
  MEASURE(Group.MARK, "U"),
  STRAIGHTEN(Group.MARK, "shift S"),
  LINE_UP(Group.MARK, "shift L"),
  LINE_UP_PAGES(Group.MARK, ""),
  LINE_UP_ALONE(Group.MARK, "shift A"),
  READ(Group.JOB, "V"),
  METER(Group.JOB, "M"),
  LIFTED(Group.JOB, "Q"),
  LIMIT(Group.JOB, "shift V"),
  DIFFERENCES(Group.JOB, "D"),
  SUSPECTS(Group.JOB, "S"),
  CONDITION(Group.JOB, "O"),
  CONDITIONS(Group.JOB, "shift O"),
  HYPOTHESIS(Group.JOB, "H"),
  HYPOTHESES(Group.JOB, "shift H"),
  LOG(Group.JOB, "E"),
  CHECKLIST(Group.JOB, "W"),
  INTAKE(Group.JOB, "I"),
  UNIT_PHOTO(Group.JOB, "Y"),
  CLOSE_UP(Group.JOB, "shift Y"),
  REMOVE_UNIT_PHOTO(Group.JOB, ""),
  MEASURED(Group.EVIDENCE, "1"),
  BEEPED(Group.EVIDENCE, "2"),
  SEEN(Group.EVIDENCE, "3"),
  MATCHED(Group.EVIDENCE, "4"),
  INFERRED(Group.EVIDENCE, "5"),
  GUESSED(Group.EVIDENCE, "6"),
  FIND(Group.GO, "ctrl F"),
  NEXT_CARD(Group.GO, "RIGHT"),
  PREVIOUS_CARD(Group.GO, "LEFT"),
  FIRST_CARD(Group.GO, "HOME"),
  LAST_CARD(Group.GO, "END"),
  OPEN_CARD(Group.GO, "ENTER"),
  TWIN(Group.GO, "T"),
  TWINS(Group.GO, "ctrl T"),
  GHOSTS(Group.GO, "J"),
  FLIP(Group.GO, "F"),
  NEXT_PHOTO(Group.GO, "PAGE_DOWN"),
  PREVIOUS_PHOTO(Group.GO, "PAGE_UP"),
  NEXT_PAGE(Group.GO, "shift PAGE_DOWN"),
  PREVIOUS_PAGE(Group.GO, "shift PAGE_UP"),
  FINDINGS(Group.GO, "G"),
  CLASHES(Group.GO, "shift G"),
  TRUST(Group.GO, "ctrl G"),
  NEXT_AREA(Group.GO, "F6"),
  PREVIOUS_AREA(Group.GO, "shift F6"),
  LINK(Group.VIEW, "K"),
  BESIDE(Group.VIEW, "A"),
  ZOOM_IN(Group.VIEW, "PLUS"),
  ZOOM_OUT(Group.VIEW, "MINUS"),
  FIT(Group.VIEW, "0"),
  ACTUAL(Group.VIEW, "9"),
  LOUPE(Group.VIEW, "L"),
  TURN(Group.VIEW, "R"),
  THROUGH(Group.VIEW, "B"),
  LAY_OVER(Group.VIEW, "X"),
  CLEAN(Group.VIEW, ""),
  SYSTEM(Group.THEME, ""),
  LIGHT(Group.THEME, ""),
  DARK(Group.THEME, ""),
  SHORTCUTS(Group.HELP, "F1"),
  CAUTIONS(Group.HELP, "");

  /** The menu that an act stands in. */
  public enum Group {
    FILE,
    EDIT,
    MARK,
    JOB,
    EVIDENCE,
    GO,
    VIEW,
    THEME,
    HELP
  }

  private final Group group;
  private final String key;

  UserAction(Group group, String key) {
    this.group = group;
    this.key = key;
  }

  public Group group() {
    return group;
  }

  /** Its text in menus. */
  public String text() {
    return Messages.of("act." + Messages.word(this));
  }

  /** What takes a mode in hand; the mode to rest in is gone back to. */
  public static UserAction taking(Mode mode) {
    return Stream.of(values())
        .filter(action -> Messages.word(action).equals(mode.word()))
        .findFirst()
        .orElse(BACK);
  }

  public Optional<KeyStroke> key() {
    return key.isEmpty() ? Optional.empty() : Optional.of(KeyStroke.getKeyStroke(key));
  }
}
