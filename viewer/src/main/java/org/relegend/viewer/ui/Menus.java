package org.relegend.viewer.ui;

import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.UserAction;

/** The menu bar, made from the list of acts. */
final class Menus {
  private final Actions acts;
  private final JMenu recent = new JMenu(Messages.of("menu.recent"));

  Menus(Actions acts) {
    this.acts = acts;
  }

  /** Filled by the window with what was open lately. */
  JMenu recent() {
    return recent;
  }

  JMenuBar bar() {
    JMenuBar bar = new JMenuBar();
    JMenu file = menu("menu.file", UserAction.Group.FILE);
    file.insert(recent, 2);
    file.insertSeparator(4);
    file.insertSeparator(7);
    bar.add(file);
    JMenu edit = menu("menu.edit", UserAction.Group.EDIT);
    edit.insertSeparator(2);
    bar.add(edit);
    JMenu mark = menu("menu.mark", UserAction.Group.MARK);
    JMenu evidence = new JMenu(Messages.of("menu.evidence"));
    addChoices(evidence, UserAction.Group.EVIDENCE);
    mark.addSeparator();
    mark.add(evidence);
    bar.add(mark);
    bar.add(menu("menu.job", UserAction.Group.JOB));
    bar.add(menu("menu.go", UserAction.Group.GO));
    JMenu view = menu("menu.view", UserAction.Group.VIEW);
    JMenu theme = new JMenu(Messages.of("menu.theme"));
    addChoices(theme, UserAction.Group.THEME);
    view.addSeparator();
    view.add(theme);
    bar.add(view);
    bar.add(menu("menu.help", UserAction.Group.HELP));
    return bar;
  }

  private JMenu menu(String key, UserAction.Group group) {
    JMenu menu = new JMenu(Messages.of(key));
    for (UserAction act : UserAction.values()) {
      if (act.group() == group) {
        menu.add(act == UserAction.LINK ? new JCheckBoxMenuItem(acts.action(act)) : item(act));
      }
    }
    return menu;
  }

  private JMenuItem item(UserAction act) {
    return new JMenuItem(acts.action(act));
  }

  private void addChoices(JMenu menu, UserAction.Group group) {
    ButtonGroup one = new ButtonGroup();
    for (UserAction act : UserAction.values()) {
      if (act.group() == group) {
        JRadioButtonMenuItem choice = new JRadioButtonMenuItem(acts.action(act));
        one.add(choice);
        menu.add(choice);
      }
    }
  }
}
