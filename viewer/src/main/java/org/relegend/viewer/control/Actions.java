package org.relegend.viewer.control;

import java.awt.event.ActionEvent;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** What each {@link UserAction} does in one window, as actions for menus and buttons. */
public final class Actions {
  private static final Runnable NOTHING = () -> {};

  private final Map<UserAction, Binding> deeds = new EnumMap<>(UserAction.class);

  public Actions() {
    for (UserAction act : UserAction.values()) {
      deeds.put(act, new Binding(act));
    }
  }

  public Action action(UserAction act) {
    return deed(act);
  }

  /** From now on the act does this. */
  public void on(UserAction act, Runnable deed) {
    deed(act).run = deed;
  }

  public void run(UserAction act) {
    if (deed(act).isEnabled()) {
      deed(act).run.run();
    }
  }

  public void enable(UserAction act, boolean enabled) {
    deed(act).setEnabled(enabled);
  }

  /** Shows the act as chosen, in menus that have a mark for it. */
  public void select(UserAction act, boolean selected) {
    deed(act).putValue(Action.SELECTED_KEY, selected);
  }

  /** Gives the act another text than its own. */
  public void rename(UserAction act, String text) {
    deed(act).putValue(Action.NAME, text);
  }

  private Binding deed(UserAction act) {
    Binding deed = deeds.get(act);
    if (deed == null) {
      throw new IllegalArgumentException("no deed for " + act);
    }
    return deed;
  }

  private static final class Binding extends AbstractAction {
    private transient Runnable run = NOTHING;

    Binding(UserAction act) {
      super(act.text());
      act.key().ifPresent(key -> putValue(ACCELERATOR_KEY, key));
    }

    @Override
    public void actionPerformed(ActionEvent event) {
      run.run();
    }
  }
}
