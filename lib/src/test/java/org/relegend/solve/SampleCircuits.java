package org.relegend.solve;

import java.util.List;
import java.util.Map;

/** Circuits of different style, all of our own making, two channels each. */
public final class SampleCircuits {
  private SampleCircuits() {}

  /** An input stage with gain, a tone control and an inverting output stage. */
  public static final ChannelCircuit OPAMP_STAGES =
      new ChannelCircuit(
          "op-amp stages",
          Map.of("V+", 15.0, "V-", -15.0),
          """
          J1 jack - T=IN S=GND
          C1 cap 1u IN P1
          R1 resistor 100k P1 GND
          U1! dual-opamp TL072 3/5=P1 2/6=M1 1/7=O1 8=V+ 4=V-
          R2 resistor 10k M1 O1
          C2 cap 100p M1 O1
          R3 resistor 1k M1 G1
          C3 cap-pol 47u G1 GND
          R4 resistor 4k7 O1 T1
          RV1 pot 20k T1 W1 T2
          R5 resistor 4k7 T2 O2
          U2! dual-opamp NE5532 3/5=P2 2/6=W1 1/7=O2 8=V+ 4=V-
          R6 resistor 10k P2 GND
          R7 resistor 10k O2 M3
          R8 resistor 22k M3 O3
          U3! dual-opamp NE5532 3/5=P3 2/6=M3 1/7=O3 8=V+ 4=V-
          R9 resistor 6k8 P3 GND
          R10 resistor 47R O3 S1
          C4 cap-pol 22u S1 OUT
          R11 resistor 47k OUT GND
          J2 jack - T=OUT S=GND
          D1 diode 1N4148 M3 GND
          D2 diode 1N4148 GND M3
          """);

  /** A long-tailed pair, a voltage amplifier and complementary followers. */
  public static final ChannelCircuit POWER_AMPLIFIER =
      new ChannelCircuit(
          "discrete power amplifier",
          Map.of("V+", 35.0, "V-", -35.0),
          """
          J1 jack - T=IN S=GND
          C1 cap-pol 10u B1 IN
          R1 resistor 22k B1 GND
          Q1 pnp 2N5401 E=T B=B1 C=C1N
          Q2 pnp 2N5401 E=T B=FB C=C2N
          R2 resistor 15k V+ TT
          R19 resistor 2k2 TT T
          C5 cap-pol 47u V+ TT
          R3 resistor 680R C1N V-
          R4 resistor 680R C2N V-
          Q3 npn 2N5551 E=E3 B=C1N C=LO
          R5 resistor 47R E3 V-
          R6 resistor 3k3 V+ BS
          R7 resistor 3k3 BS HI
          C2 cap-pol 100u BS OUT
          Q4 npn BD139 E=LO B=VB C=HI
          R8 resistor 1k8 HI VB
          R9 resistor 820R VB LO
          Q5 npn BD139 C=V+ B=HI E=D1N
          Q6 pnp BD140 C=V- B=LO E=D2N
          R10 resistor 220R D1N OUT
          R11 resistor 220R D2N OUT
          Q7 npn TIP41 C=V+ B=D1N E=EP
          Q8 pnp TIP42 C=V- B=D2N E=EN
          R12 resistor 0R33 EP OUT
          R13 resistor 0R33 EN OUT
          R14 resistor 22k OUT FB
          R15 resistor 1k FB FG
          C3 cap-pol 100u FG GND
          R16 resistor 10R OUT Z
          C4 cap 100n Z GND
          LS1 speaker 8R OUT GND
          """);

  /** A direct-coupled pair behind a zener and follower supply. */
  public static final ChannelCircuit PREAMPLIFIER =
      new ChannelCircuit(
          "discrete preamplifier with supply",
          Map.of("RAW", 38.0),
          """
          R20 resistor 1k5 RAW ZB
          D1 zener 24V GND ZB
          C20 cap-pol 100u ZB GND
          Q9 npn BD139 C=RAW B=ZB E=VS
          C21 cap-pol 220u VS GND
          R21 resistor 10k VS GND
          R22 resistor 470R VS VF
          C22 cap-pol 100u VF GND
          C1 cap-pol 4u7 B1 IN
          J1 jack - T=IN S=GND
          R1 resistor 220k B1 E2
          Q1 npn BC549 C=C1N B=B1 E=E1
          R2 resistor 150k VF C1N
          R3 resistor 1k E1 GND
          Q2 npn BC549 C=C2N B=C1N E=E2
          R4 resistor 10k VF C2N
          R5 resistor 1k8 E2 GND
          C2 cap-pol 47u E2 GND
          R6 resistor 47k C3N E1
          C3 cap-pol 10u C2N C3N
          Q3 npn BC547 C=VF B=C2N E=E3
          R7 resistor 4k7 E3 GND
          C4 cap-pol 10u E3 OUT
          R8 resistor 100k OUT GND
          J2 jack - T=OUT S=GND
          """);

  /** Nine volts, half of it as a reference, a field-effect input and clipping diodes. */
  public static final ChannelCircuit PEDAL =
      new ChannelCircuit(
          "single supply pedal",
          Map.of("V9", 9.0),
          """
          R1 resistor 10k V9 VH
          R2 resistor 10k VH GND
          C1 cap-pol 47u VH GND
          J1 jack - T=IN S=GND
          R3 resistor 1M IN GND
          C2 cap 47n IN G1
          R4 resistor 1M G1 VH
          Q1 njfet 2N5457 D=V9 G=G1 S=S1
          R5 resistor 10k S1 GND
          C3 cap 100n S1 P1
          R6 resistor 470k P1 VH
          U1! dual-opamp 4558 3/5=P1 2/6=M1 1/7=O1 8=V9 4=GND
          R7 resistor 4k7 M1 N1
          C4 cap 47n N1 VH
          R8 resistor 470k M1 O1
          D1 diode 1N4148 M1 O1
          D2 diode 1N4148 O1 M1
          R9 resistor 1k O1 T1
          C5 cap 220n T1 GND
          R10 resistor 4k7 T1 P2
          U2! dual-opamp 4558 3/5=P2 2/6=M2 1/7=O2 8=V9 4=GND
          R11 resistor 10k M2 O2
          R12 resistor 10k M2 VH
          C6 cap 1u O2 V1
          RV1 pot 100k V1 W1 GND
          C7 cap 100n W1 B2
          R13 resistor 470k B2 VH
          Q2 npn 2N5088 C=V9 B=B2 E=E2
          R14 resistor 10k E2 GND
          C8 cap-pol 10u E2 OUT
          R15 resistor 100k OUT GND
          J2 jack - T=OUT S=GND
          """);

  /** Two triodes, a follower, and a pentode; heaters are left out. */
  public static final ChannelCircuit VALVES =
      new ChannelCircuit(
          "valve stages",
          Map.of("HT", 310.0),
          """
          R1 resistor 10k HT H1
          C1 cap-pol 22u H1 GND
          R2 resistor 22k H1 H2
          C2 cap-pol 22u H2 GND
          J1 jack - T=IN S=GND
          R3 resistor 1M IN GND
          R4 resistor 33k IN GA
          V1 dual-triode ECC83 1=AA 2=GA 3=KA 6=AB 7=GB 8=KB
          R5 resistor 100k H2 AA
          R6 resistor 1k5 KA GND
          C3 cap-pol 25u KA GND
          C4 cap 22n AA V1N
          RV1 pot 500k V1N GB GND
          R7 resistor 100k H2 AB
          R8 resistor 1k8 KB GND
          V2 triode ECC82 A=H1 G=AB K=KC
          R9 resistor 47k KC GND
          C5 cap 100n KC GP
          R10 resistor 470k GP GND
          V3 pentode EL84 A=AP G1=GP G2=G2N K=KP
          R11 resistor 150R KP GND
          C6 cap-pol 50u KP GND
          R12 resistor 1k HT G2N
          R13 resistor 220R HT AP
          """);

  /** A pair of junction field-effect transistors with a current source, before an op-amp. */
  public static final ChannelCircuit FET_INPUT =
      new ChannelCircuit(
          "FET input",
          Map.of("V+", 15.0, "V-", -15.0),
          """
          J1 jack - T=IN S=GND
          C1 cap 100n IN G1
          R1 resistor 1M G1 GND
          Q1 njfet 2N5457 D=D1N G=G1 S=SS
          Q2 njfet 2N5457 D=D2N G=FB S=SS
          R2 resistor 3k9 V+ D1N
          R3 resistor 3k9 V+ D2N
          Q3 npn BC547 C=SS B=B3 E=E3
          R4 resistor 2k2 E3 V-
          D1 led red B3 L1
          D2 diode 1N4148 L1 V-
          R5 resistor 10k GND B3
          U1! dual-opamp TL072 3/5=D2N 2/6=D1N 1/7=O1 8=V+ 4=V-
          R6 resistor 10k O1 FB
          R7 resistor 1k FB F1
          C2 cap-pol 100u F1 GND
          C3 cap 22p O1 D1N
          Q4 nmos 2N7000 D=V+ G=O1 S=S4
          R8 resistor 4k7 S4 V-
          R9 resistor 100R S4 OUT
          R10 resistor 100k OUT GND
          """);

  /** Complementary followers into complementary mirrors. */
  public static final ChannelCircuit CURRENT_FEEDBACK =
      new ChannelCircuit(
          "current feedback amplifier",
          Map.of("V+", 18.0, "V-", -18.0),
          """
          J1 jack - T=IN S=GND
          R1 resistor 47k IN GND
          R2 resistor 100R IN B1
          Q1 npn BC547 C=V+ B=B1 E=EA
          Q2 pnp BC557 C=V- B=B1 E=EB
          R3 resistor 15k EA V-
          R4 resistor 15k EB V+
          Q3 npn BC547 C=CP B=EB E=E3
          Q4 pnp BC557 C=CN B=EA E=E4
          R5 resistor 47R E3 FB
          R6 resistor 47R E4 FB
          R7 resistor 330R V+ EM
          R8 resistor 330R V- EN
          Q5 pnp BC557 E=EM B=CP C=CP
          Q6 npn BC547 E=EN B=CN C=CN
          R9 resistor 330R V+ E7
          R10 resistor 330R V- E8
          Q7 pnp BC557 E=E7 B=CP C=Z1
          Q8 npn BC547 E=E8 B=CN C=Z2
          D1 diode 1N4148 Z1 ZM
          D2 diode 1N4148 ZM Z2
          Q9 npn BD139 C=V+ B=Z1 E=EO
          Q10 pnp BD140 C=V- B=Z2 E=EQ
          R11 resistor 22R EO OUT
          R12 resistor 22R EQ OUT
          R13 resistor 1k OUT FB
          R14 resistor 220R FB GND
          R15 resistor 10k OUT GND
          """);

  /** Fixed and adjustable regulators, a shunt reference and lamps. */
  public static final ChannelCircuit SUPPLY =
      new ChannelCircuit(
          "regulator supply",
          Map.of("RAW+", 24.0, "RAW-", -23.0),
          """
          F1 fuse 500mA RAW+ I1
          U1 regulator L7815CV 1=I1 2=GND 3=P15
          C1 cap-pol 470u P15 GND
          R1 resistor 330R P15 GND
          U2 regulator-neg L7915CV 2=RAW- 1=GND 3=N15
          C2 cap-pol 470u GND N15
          R2 resistor 470R GND N15
          U3 regulator-adj LM317T 3=I1 1=ADJ 2=P9
          R3 resistor 240R P9 ADJ
          R4 resistor 1k5 ADJ GND
          R5 resistor 680R P9 GND
          D1 led green P9 LK
          R6 resistor 1k8 LK GND
          R7 resistor 2k2 P15 REF
          U4 reference TL431CP 1=RD 6=GND 8=REF
          R8 resistor 10k REF RD
          R9 resistor 10k RD GND
          D2 zener 6V8 N6 GND
          R10 resistor 1k N15 N6
          R11 resistor 4k7 N6 GND
          """);

  /** A level detector with hysteresis that drives a lamp. */
  public static final ChannelCircuit COMPARATOR =
      new ChannelCircuit(
          "comparator",
          Map.of("V12", 12.0),
          """
          R1 resistor 47k V12 REF
          R2 resistor 10k REF GND
          R3 resistor 100k V12 SIG
          R4 resistor 47k SIG GND
          C1 cap 10n SIG GND
          U1! dual-comparator LM393 3/5=P 2/6=SIG 1/7=O 8=V12 4=GND
          R5 resistor 10k REF P
          R6 resistor 1M P O
          R7 resistor 4k7 V12 O
          R8 resistor 22k O B
          Q1 npn BC547 C=C B=B E=GND
          D1 led red V12 L
          R9 resistor 1k L C
          R10 resistor 10k O B2
          Q2 pnp BC557 C=C2 B=B3 E=V12
          R11 resistor 10k V12 B3
          R12 resistor 22k B3 O
          R13 resistor 10k C2 GND
          D2 diode 1N4148 B2 C2
          """);

  public static List<ChannelCircuit> all() {
    return List.of(
        OPAMP_STAGES,
        POWER_AMPLIFIER,
        PREAMPLIFIER,
        PEDAL,
        VALVES,
        FET_INPUT,
        CURRENT_FEEDBACK,
        SUPPLY,
        COMPARATOR);
  }
}
