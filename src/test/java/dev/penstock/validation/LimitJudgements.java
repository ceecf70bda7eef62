package dev.penstock.validation;

import java.util.Map;

/** What the limit that ends a search is worth, in words, for each engine of docs/validation/limits.md. */
final class LimitJudgements {

    private static final String TUBES =
            "not credible: a tube is judged as a flat wall that bends and buckles between channels";
    private static final String COPPER =
            "not credible: at the pressure and about the jacket drop that flew, the computed wall is far above its limit";

    static final Map<String, String> ALL = Map.ofEntries(
            Map.entry("F-1", TUBES + "; soot on them, of which little is measured, decides besides"),
            Map.entry("J-2", TUBES),
            Map.entry("J-2S", "no answer: channels that are sized for the throat do not find room elsewhere"),
            Map.entry("RL10A-3-3A", TUBES),
            Map.entry("RL10B-2", TUBES),
            Map.entry("LE-7", COPPER),
            Map.entry("Vulcain 1", COPPER),
            Map.entry("RD-253", "credible as a lower bound: later marks flew at 16.5 MPa"),
            Map.entry(
                    "RD-170",
                    "credible: later marks flew at 25.9 MPa, and no higher pressure behind a pump is known here"),
            Map.entry("RD-180", "credible: 25.7 to 26.7 MPa are the highest flown with kerosene"),
            Map.entry(
                    "RD-0124",
                    "not credible: coking is missed by a few per cent; chambers of 74 kN are hard to cool, and more film"
                            + " than the level's may have flown"),
            Map.entry(
                    "RD-0110",
                    "plausible but too low: coking, by a wall that flew 15 % higher; its wall and film are not known"),
            Map.entry(
                    "LR-87-AJ-11", "credible: hot wall of steel; nothing with these propellants and tubes flew higher"),
            Map.entry("LR-87-AJ-7", "credible: hot wall of steel; the later mark flew at 5.9 MPa"));

    private LimitJudgements() {}
}
