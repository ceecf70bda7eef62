package dev.penstock.study.space;

import dev.penstock.quantities.Notation;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A number that a study asks of each point.
 *
 * @param path path as the trail has it, ending in the SI unit
 * @param title name for people
 * @param notation how people read it
 * @param ofVehicle whether the vehicle must be sized for it
 * @param of its value, SI; empty where the case does not have it
 */
public record StudyFigure(
        String path, String title, Notation notation, boolean ofVehicle, Function<CaseAnswer, OptionalDouble> of) {}
