package org.relegend.viewer.mode.bench;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.Reading;
import org.relegend.bench.rule.NetVoltage;
import org.relegend.bench.rule.NodeVerdict;
import org.relegend.bench.rule.ProbeLoad;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.paint.Palette;
import org.relegend.viewer.session.Session;

/** The line of the job: what is read now, what was read there, the twin's beside it. */
public final class JobBar extends JPanel {
  private static final int FIGURES = 4;

  private final Session session;
  private final JLabel at = new JLabel();
  private final ReadingField field;
  private final JLabel message = new JLabel();
  private final JLabel how = new JLabel();
  private final JCheckBox lifted = new JCheckBox(Messages.of("reading.lifted"));
  private final JTextArea warned = new JTextArea();
  private Runnable taken = () -> {};

  public JobBar(Session session) {
    super(new BorderLayout(12, 0));
    this.session = session;
    field = new ReadingField(session.room(OpenJob.class)::type, () -> taken.run());
    setName("job-bar");
    setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 12));
    JPanel left = new JPanel(new FlowLayout(FlowLayout.LEADING, 8, 0));
    at.putClientProperty("FlatLaf.styleClass", "h3");
    left.add(at);
    left.add(field);
    lifted.setName("lifted");
    lifted.setFocusable(false);
    lifted.setToolTipText(Messages.of("reading.lifted.tip"));
    lifted.addActionListener(pressed -> session.room(OpenJob.class).setLifted(lifted.isSelected()));
    left.add(lifted);
    message.setName("compared");
    message.putClientProperty("FlatLaf.styleClass", "h4");
    add(left, BorderLayout.WEST);
    add(message, BorderLayout.CENTER);
    add(how, BorderLayout.EAST);
    warned.setName("loading");
    warned.setEditable(false);
    warned.setFocusable(false);
    warned.setLineWrap(true);
    warned.setWrapStyleWord(true);
    warned.setBackground(Palette.YELLOW);
    warned.setForeground(Palette.BLACK);
    warned.setBorder(BorderFactory.createEmptyBorder(2, 8, 2, 8));
    add(warned, BorderLayout.SOUTH);
    setVisible(session.room(OpenJob.class).isOpen());
    refresh();
  }

  /** The keyboard goes to where a reading is typed. */
  public void takeFocus() {
    field.requestFocusInWindow();
  }

  /** Calls back after a reading was taken. */
  public void onTaken(Runnable listener) {
    taken = listener;
  }

  public boolean hasFocusInside() {
    return field.isFocusOwner();
  }

  /** Shows where a reading typed now would be, and what is known there. */
  public void refresh() {
    OpenJob bench = session.room(OpenJob.class);
    setVisible(bench.isOpen());
    Optional<Subject> place = bench.place();
    at.setText(
        place
            .map(subject -> Messages.of("reading.at", session.map().nameOf(subject)))
            .orElse(Messages.of("reading.nowhere")));
    message.setText(place.map(this::known).orElse(" "));
    message.getAccessibleContext().setAccessibleName(message.getText());
    how.setText(how(bench.setting()));
    lifted.setSelected(bench.isLifted());
    String warning = place.flatMap(this::warning).orElse("");
    warned.setText("\u26a0 " + warning);
    warned.setVisible(!warning.isEmpty());
  }

  /** What the probe itself would do to the node, told before it touches. */
  private Optional<String> warning(Subject place) {
    OpenJob bench = session.room(OpenJob.class);
    return bench
        .unit()
        .flatMap(
            unit ->
                bench
                    .node(place)
                    .map(net -> ProbeLoad.of(unit, net))
                    .filter(ProbeLoad::exact)
                    .flatMap(loading -> loading.warning(unit, bench.setting().with())));
  }

  private String how(MeasurementSetup setting) {
    String meter =
        setting.with().known()
            ? new Amount(Quantity.RESISTANCE, setting.with().ohms()).text(FIGURES)
            : Messages.of("reading.meter.unknown");
    String how = Messages.of("reading.how", meter, Messages.of("power." + setting.power().word()));
    return setting.against().isEmpty()
        ? how
        : how
            + "  \u00b7  "
            + Messages.of(
                "reading.against", session.map().nameOf(Subject.of(new NetId(setting.against()))));
  }

  private String known(Subject place) {
    OpenJob bench = session.room(OpenJob.class);
    Optional<NetId> node = bench.node(place);
    Optional<UnitReadings> unit = bench.unit();
    if (node.isEmpty() || unit.isEmpty()) {
      return bench
          .job()
          .flatMap(job -> job.readingsAt(place).stream().reduce((first, last) -> last))
          .map(reading -> reading.amount().text(FIGURES))
          .orElse(" ");
    }
    return compared(unit.get(), node.get());
  }

  /** "5.34 V · twin B_ATT -4.7 mV · differs by 5.345 V, more than 50 mV". */
  private static String compared(UnitReadings unit, NetId net) {
    Optional<Reading> reading = unit.reading(net);
    StringBuilder text =
        new StringBuilder(
            reading.map(found -> found.amount().text(FIGURES)).orElse(Messages.of("reading.none")));
    Optional<NetVoltage> twin = unit.twin(net);
    unit.twins()
        .net(net)
        .ifPresent(
            other ->
                text.append("  \u00b7  ")
                    .append(
                        Messages.of(
                            "reading.twin",
                            unit.name(other),
                            twin.map(NetVoltage::text).orElse(Messages.of("reading.none")))));
    OptionalDouble difference = unit.difference(net);
    if (difference.isPresent()) {
      String key = unit.verdict(net) == NodeVerdict.BAD ? "reading.differs" : "reading.within";
      text.append("  \u00b7  ")
          .append(
              Messages.of(
                  key,
                  NetVoltage.text(difference.getAsDouble()),
                  NetVoltage.text(unit.limit(net))));
    }
    return text.toString();
  }
}
