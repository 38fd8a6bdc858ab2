package org.relegend.viewer.ui;

import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;

/** The menu bar, made from the list of acts. */
final class Menus {
  private final Acts acts;
  private final JMenu recent = new JMenu(Texts.of("menu.recent"));

  Menus(Acts acts) {
    this.acts = acts;
  }

  /** Filled by the window with what was open lately. */
  JMenu recent() {
    return recent;
  }

  JMenuBar bar() {
    JMenuBar bar = new JMenuBar();
    JMenu file = menu("menu.file", Act.Group.FILE);
    file.insert(recent, 2);
    file.insertSeparator(4);
    file.insertSeparator(7);
    bar.add(file);
    JMenu edit = menu("menu.edit", Act.Group.EDIT);
    edit.insertSeparator(2);
    bar.add(edit);
    JMenu mark = menu("menu.mark", Act.Group.MARK);
    JMenu evidence = new JMenu(Texts.of("menu.evidence"));
    addChoices(evidence, Act.Group.EVIDENCE);
    mark.addSeparator();
    mark.add(evidence);
    bar.add(mark);
    bar.add(menu("menu.job", Act.Group.JOB));
    bar.add(menu("menu.go", Act.Group.GO));
    JMenu view = menu("menu.view", Act.Group.VIEW);
    JMenu theme = new JMenu(Texts.of("menu.theme"));
    addChoices(theme, Act.Group.THEME);
    view.addSeparator();
    view.add(theme);
    bar.add(view);
    bar.add(menu("menu.help", Act.Group.HELP));
    return bar;
  }

  private JMenu menu(String key, Act.Group group) {
    JMenu menu = new JMenu(Texts.of(key));
    for (Act act : Act.values()) {
      if (act.group() == group) {
        menu.add(act == Act.LINK ? new JCheckBoxMenuItem(acts.action(act)) : item(act));
      }
    }
    return menu;
  }

  private JMenuItem item(Act act) {
    return new JMenuItem(acts.action(act));
  }

  private void addChoices(JMenu menu, Act.Group group) {
    ButtonGroup one = new ButtonGroup();
    for (Act act : Act.values()) {
      if (act.group() == group) {
        JRadioButtonMenuItem choice = new JRadioButtonMenuItem(acts.action(act));
        one.add(choice);
        menu.add(choice);
      }
    }
  }
}
