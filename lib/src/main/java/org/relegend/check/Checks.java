package org.relegend.check;

import java.util.Comparator;
import java.util.List;
import org.relegend.finding.Finding;

/** All checks, and how to run them. A new check is one class, one line here and one test. */
public final class Checks {
  /** In the order in which their findings are told, within one severity. */
  public static final List<Check> ALL =
      List.of(
          new UnmarkedDanger(),
          new LiveChassis(),
          new ShortedBarrier(),
          new BridgedBarrier(),
          new MainsContradicted(),
          new LooksLikeMains(),
          new JoinedByAssumption(),
          new SupplyUnknown(),
          new PinOnTwoNets(),
          new NetPinOfNothing(),
          new DesignatorTwice(),
          new PlacementOutsidePicture(),
          new PictureMissing(),
          new ZoneOnNoPicture(),
          new PictureChanged(),
          new NetsOfSamePins(),
          new NetNameTwice(),
          new PinNotInPackage(),
          new SectionPinMissing(),
          new ValueUnreadable(),
          new ValueOfOtherQuantity(),
          new TwinKindDiffers(),
          new PlacementOfNothing(),
          new PlacementOnNoPicture(),
          new TwinOfNothing(),
          new MatingOfNothing(),
          new LineUpOfNothing(),
          new LineUpRing(),
          new LineUpRefused(),
          new LineUpPairWrong(),
          new DiscrepancyOfNothing(),
          new BoardUnknown(),
          new ChannelUnknown(),
          new UnmarkedCharge(),
          new ZoneOutsidePicture(),
          new ZoneCrossingItself(),
          new DrawnOtherwise(),
          new ChannelPartWithoutTwin(),
          new DesignatorClassUnknown(),
          new KindUnknown(),
          new ValueOutsideSeries(),
          new VoltageUnknown(),
          new VoltageBetween(),
          new PartWithoutPins(),
          new OnePinNet(),
          new BeepedOnly(),
          new EmptyNet(),
          new NotYetPlaced());

  private Checks() {}

  /** The findings of all checks, the graver ones first; the same for the same map. */
  public static List<Finding> inspect(CheckContext context) {
    return ALL.stream()
        .flatMap(check -> check.inspect(context).stream())
        .sorted(Comparator.comparing(Finding::severity))
        .toList();
  }
}
