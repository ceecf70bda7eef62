package dev.penstock.validation;

import java.util.Map;

/** What the limit that ends a search is worth, in words, for each engine of docs/validation/limits.md. */
final class LimitJudgements {

    private static final String TUBE_WALL = "plausible: hot wall of steel tubes";
    private static final String COPPER =
            "the wall is credible, copper with hydrogen flew to 22 MPa; bearings end it, by a limit of the middle of their range";

    static final Map<String, String> ALL = Map.ofEntries(
            Map.entry(
                    "F-1",
                    "plausible: nickel tubes with the soot of a textbook's chamber; as thick as its own tubes. With 0.33 mm it is 11.2, with"
                            + " steel 5.2, and with the soot of a calorimeter there is none"),
            Map.entry(
                    "J-2",
                    TUBE_WALL + "; its later mark flew at 8.3 MPa. With tubes of 0.40 instead of 0.33 mm it is 5.6"),
            Map.entry(
                    "J-2S",
                    TUBE_WALL + "; with tubes of 0.40 mm it is 5.3, so the wall decides, which is not published"),
            Map.entry(
                    "RL10A-3-3A",
                    "an upper bound: hoop stress of the tubes at the pump's pressure; that so much heat is found is the jacket's, whose"
                            + " measured heat is met at 0.8"),
            Map.entry("RL10B-2", "as RL10A-3-3A; later marks of the family flew at 4.4 MPa"),
            Map.entry("LE-7", COPPER),
            Map.entry("RD-253", "credible as a lower bound: later marks flew at 16.5 MPa"),
            Map.entry(
                    "RD-170",
                    "credible: later marks flew at 25.9 MPa, and no higher pressure behind a pump is known here"),
            Map.entry("RD-180", "credible: 25.7 to 26.7 MPa are the highest flown with kerosene"),
            Map.entry(
                    "RD-0124",
                    "credible as an upper bound, the highest flown of its kind; at the pressure that flew coking is missed by a per cent, since"
                            + " soot thins with pressure and chambers of 74 kN are hard to cool"),
            Map.entry(
                    "RD-0110",
                    "an upper bound: dumped gas costs more impulse than pressure brings long before; its wall and film are not known"),
            Map.entry(
                    "Vulcain 1",
                    COPPER + "; no gas generator flew above 12 MPa, since more brings no impulse: best are 3 to 5 MPa"),
            Map.entry(
                    "LR-87-AJ-11",
                    "an upper bound: a tenth of the fuel as film, which is not known of it; with less, its coolant burns out below its critical"
                            + " pressure, and above it nothing here says so"),
            Map.entry("LR-87-AJ-7", "as LR-87-AJ-11, which flew at 5.9 MPa"));

    private LimitJudgements() {}
}
