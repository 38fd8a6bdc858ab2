package org.relegend.viewer.ui;

import java.awt.event.ActionEvent;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** What each {@link Act} does in one window, as actions for menus and buttons. */
final class Acts {
  private static final Runnable NOTHING = () -> {};

  private final Map<Act, Deed> deeds = new EnumMap<>(Act.class);

  Acts() {
    for (Act act : Act.values()) {
      deeds.put(act, new Deed(act));
    }
  }

  Action action(Act act) {
    return deed(act);
  }

  /** From now on the act does this. */
  void on(Act act, Runnable deed) {
    deed(act).run = deed;
  }

  void run(Act act) {
    if (deed(act).isEnabled()) {
      deed(act).run.run();
    }
  }

  void enable(Act act, boolean enabled) {
    deed(act).setEnabled(enabled);
  }

  /** Shows the act as chosen, in menus that have a mark for it. */
  void select(Act act, boolean selected) {
    deed(act).putValue(Action.SELECTED_KEY, selected);
  }

  /** Gives the act another text than its own. */
  void rename(Act act, String text) {
    deed(act).putValue(Action.NAME, text);
  }

  private Deed deed(Act act) {
    Deed deed = deeds.get(act);
    if (deed == null) {
      throw new IllegalArgumentException("no deed for " + act);
    }
    return deed;
  }

  private static final class Deed extends AbstractAction {
    private transient Runnable run = NOTHING;

    Deed(Act act) {
      super(act.text());
      act.key().ifPresent(key -> putValue(ACCELERATOR_KEY, key));
    }

    @Override
    public void actionPerformed(ActionEvent event) {
      run.run();
    }
  }
}
