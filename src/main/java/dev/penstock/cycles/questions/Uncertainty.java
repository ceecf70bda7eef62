package dev.penstock.cycles.questions;

import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.chamber.loss.Vaporisation;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cooling.jacket.JacketLimit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.input.Input;
import dev.penstock.input.InputKind;
import dev.penstock.input.InputValue;
import dev.penstock.input.Usual;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.Scatter;
import dev.penstock.provenance.Spread;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Every input of an engine that is only known within bounds: those that were read with a spread, and those that the
 * calculation found and whose declaration says how far they may be off. An input that the concept states without a spread
 * counts as exact.
 */
public final class Uncertainty {

    /** Where a balance holds the values that it found for open inputs. */
    private static final Map<Input<?>, Function<EngineBalance, OptionalDouble>> FOUND = found();

    private Uncertainty() {}

    /**
     * @param balance the engine as it is most likely
     * @return uncertain inputs by dotted key, in the order of reading; the most likely value of each is the one that the
     *     balance used
     */
    public static Map<String, InputValue> of(EngineBalance balance) {
        Map<String, InputValue> uncertain = new LinkedHashMap<>();
        for (InputValue input : balance.concept().document().inputs()) {
            known(balance, input).ifPresent(known -> uncertain.put(known.key(), known));
        }
        return Collections.unmodifiableMap(uncertain);
    }

    private static Optional<InputValue> known(EngineBalance balance, InputValue input) {
        Optional<Spread> spread = input.spread();
        if (spread.isPresent()) {
            return spread.get().low() < spread.get().high() ? Optional.of(input) : Optional.empty();
        }
        Optional<Scatter> scatter = input.input().scatter();
        Function<EngineBalance, OptionalDouble> search = FOUND.get(input.input());
        if (input.given() || scatter.isEmpty() || search == null) {
            return Optional.empty();
        }
        OptionalDouble value = search.apply(balance);
        return value.isPresent() && input.input().kind() instanceof InputKind.Quantity kind
                ? Optional.of(input.known(
                        scatter.get()
                                .around(
                                        value.getAsDouble(),
                                        kind.range().low(),
                                        kind.range().high()),
                        Usual.COMMON))
                : Optional.empty();
    }

    private static Map<Input<?>, Function<EngineBalance, OptionalDouble>> found() {
        Map<Input<?>, Function<EngineBalance, OptionalDouble>> map = new HashMap<>();
        for (LossKind kind : LossKind.values()) {
            map.put(kind.efficiency(), balance -> modelled(balance, kind));
        }
        map.put(ChamberInputs.DROP_RADIUS, Uncertainty::dropRadius);
        map.put(JacketInputs.WALL_TEMPERATURE_LIMIT, balance -> limit(balance, JacketLimit.WALL_TEMPERATURE));
        map.put(
                JacketInputs.COOLANT_WALL_TEMPERATURE_LIMIT,
                balance -> limit(balance, JacketLimit.COOLANT_WALL_TEMPERATURE));
        return map;
    }

    /** Drops of the developed injector; none where nothing is injected as a liquid. */
    private static OptionalDouble dropRadius(EngineBalance balance) {
        Vaporisation spray = balance.vaporisation(1);
        return spray.liquid() ? OptionalDouble.of(spray.dropRadius()) : OptionalDouble.empty();
    }

    /** What a loss leaves by its model; none where there is no such loss. */
    private static OptionalDouble modelled(EngineBalance balance, LossKind kind) {
        return balance.chamber().loss(kind).stream()
                .filter(loss -> loss.factor() < 1 && loss.model().isPresent())
                .mapToDouble(NamedLoss::factor)
                .findFirst();
    }

    private static OptionalDouble limit(EngineBalance balance, JacketLimit kind) {
        return balance.limits().stream()
                .filter(check -> check.kind() == kind)
                .mapToDouble(LimitCheck::limit)
                .findFirst();
    }
}
