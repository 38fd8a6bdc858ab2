package org.relegend.viewer.ui;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JToggleButton;
import org.relegend.map.Evidence;
import org.relegend.viewer.control.Actions;
import org.relegend.viewer.control.KeyText;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.control.UserAction;
import org.relegend.viewer.session.Mode;
import org.relegend.viewer.session.Session;

/** Tools, the find field, the evidence in use; and the sentence that always stands there. */
final class TopBar extends JPanel {
  private final Session session;
  private final Actions acts;
  private final Consumer<Mode> take;
  private final ButtonGroup group = new ButtonGroup();
  private final Map<Mode, AbstractButton> tools = new LinkedHashMap<>();
  private final JButton evidence = new JButton();

  /**
   * @param views of the modes, those with a button
   * @param take takes a mode in hand
   */
  TopBar(
      Session session,
      Actions acts,
      FindField field,
      Map<Mode, ModeView> views,
      Consumer<Mode> take) {
    super(new BorderLayout(0, 4));
    this.session = session;
    this.acts = acts;
    this.take = take;
    setBorder(BorderFactory.createEmptyBorder(8, 10, 4, 10));
    JPanel line = new JPanel(new BorderLayout(12, 0));
    line.add(toolButtons(views), BorderLayout.WEST);
    line.add(field, BorderLayout.CENTER);
    line.add(evidenceButton(), BorderLayout.EAST);
    add(line, BorderLayout.CENTER);
    JLabel notice = new JLabel(Messages.of("app.notice"));
    notice.setName("notice");
    add(notice, BorderLayout.SOUTH);
    refresh();
  }

  private JComponent toolButtons(Map<Mode, ModeView> views) {
    JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, 2, 0));
    row.getAccessibleContext().setAccessibleName(Messages.of("tool.group"));
    views.forEach(
        (mode, view) -> {
          if (view.hasButton()) {
            row.add(toolButton(mode));
          }
        });
    return row;
  }

  private JToggleButton toolButton(Mode mode) {
    JToggleButton button = new JToggleButton(Messages.of("tool." + mode.word()));
    button.setToolTipText(withKey(UserAction.taking(mode)));
    button.setFocusable(false);
    button.setName("tool-" + mode.word());
    button.addActionListener(pressed -> take.accept(mode));
    group.add(button);
    tools.put(mode, button);
    return button;
  }

  private static String withKey(UserAction act) {
    return act.text() + act.key().map(key -> "  (" + KeyText.text(key) + ")").orElse("");
  }

  private JComponent evidenceButton() {
    evidence.setFocusable(false);
    evidence.setToolTipText(Messages.of("evidence.group"));
    evidence.addActionListener(pressed -> evidenceMenu().show(evidence, 0, evidence.getHeight()));
    return evidence;
  }

  private JPopupMenu evidenceMenu() {
    JPopupMenu menu = new JPopupMenu(Messages.of("evidence.group"));
    for (Evidence known : Evidence.values()) {
      menu.add(new JRadioButtonMenuItem(acts.action(actOf(known))));
    }
    return menu;
  }

  static UserAction actOf(Evidence evidence) {
    return UserAction.valueOf(evidence.name());
  }

  /** Shows the tool and the evidence in use. */
  void refresh() {
    group.clearSelection();
    tools.forEach((tool, button) -> button.setSelected(tool.equals(session.mode())));
    Evidence used = session.hand().evidence();
    String key = actOf(used).key().map(KeyText::text).orElse("");
    String word = Messages.of("act." + Messages.word(used));
    evidence.setText(Messages.of("evidence.label") + ": " + key + " " + word + " \u25be");
    evidence.getAccessibleContext().setAccessibleName(Messages.of("evidence.label") + ": " + word);
    for (Evidence known : Evidence.values()) {
      acts.select(actOf(known), known == used);
    }
  }
}
