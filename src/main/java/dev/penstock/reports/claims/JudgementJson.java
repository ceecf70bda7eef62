package dev.penstock.reports.claims;

import dev.penstock.claims.answer.Band;
import dev.penstock.claims.answer.Judgement;
import dev.penstock.claims.file.Claim;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A judgement as a JSON document, in SI. */
final class JudgementJson {

    private JudgementJson() {}

    static Map<String, Object> of(Judgement j) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", j.name());
        map.put("verdict", j.verdict().key());
        map.put("reasons", j.sentences());
        map.put("cycles", kinds(j, k -> k.hypothesis().cycle().id(), "cycle", true));
        Function<Judgement.Kind, String> pair = k ->
                k.hypothesis().oxidizer().id() + " / " + k.hypothesis().fuel().id();
        if (j.kinds().stream().map(pair).distinct().count() > 1) {
            map.put(JudgementView.PROPELLANTS, kinds(j, pair, "pair", false));
        }
        map.put("claims", j.claims().stream().map(JudgementJson::claim).toList());
        map.put("unknowns", j.unknowns().stream().map(JudgementJson::finding).toList());
        map.put("figures", j.figures().stream().map(JudgementJson::finding).toList());
        map.put("about", j.about());
        map.put(
                "next_facts",
                j.nextFacts().stream()
                        .map(f -> {
                            Map<String, Object> fact = new LinkedHashMap<>();
                            fact.put("path", f.path());
                            fact.put("gain", f.gain());
                            return fact;
                        })
                        .toList());
        map.put("effective_samples", j.effectiveSamples());
        map.put("evaluations", j.evaluations());
        map.put("evaluations_not_closed", j.impossible());
        map.put("seed", (int) j.seed());
        map.put("complete", j.complete());
        map.put("cautions", j.cautions());
        return map;
    }

    /** Kinds that share a name count together. */
    private static List<Map<String, Object>> kinds(
            Judgement j, Function<Judgement.Kind, String> name, String key, boolean reasons) {
        Map<String, List<Judgement.Kind>> byName = new LinkedHashMap<>();
        j.kinds().forEach(k -> byName.computeIfAbsent(name.apply(k), n -> new ArrayList<>())
                .add(k));
        List<Map<String, Object>> list = new ArrayList<>();
        byName.forEach((n, kinds) -> {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put(key, n);
            entry.put(
                    "probability",
                    kinds.stream().mapToDouble(Judgement.Kind::probability).sum());
            if (reasons) {
                entry.put("reason", kinds.get(0).reason());
            }
            if (kinds.size() == 1) {
                entry.put("log_evidence", finite(kinds.get(0).logEvidence()));
                entry.put("log_evidence_error", kinds.get(0).evidenceError());
                entry.put("medians", kinds.get(0).medians());
            }
            list.add(entry);
        });
        return list;
    }

    private static Optional<Double> finite(double value) {
        return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    }

    private static Map<String, Object> claim(Judgement.Held held) {
        Claim claim = held.claim();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", claim.path());
        map.put("value", boxed(claim.value()));
        map.put("low", boxed(claim.low()));
        map.put("high", boxed(claim.high()));
        put(map, "posterior_", held.posterior());
        put(map, "predicted_", held.predicted());
        map.put("tension", held.tension());
        map.put("source", claim.source());
        return map;
    }

    private static Optional<Double> boxed(OptionalDouble number) {
        return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
    }

    private static void put(Map<String, Object> map, String prefix, Optional<Band> band) {
        map.put(prefix + "p05", band.map(Band::p05));
        map.put(prefix + "p50", band.map(Band::p50));
        map.put(prefix + "p95", band.map(Band::p95));
    }

    private static Map<String, Object> finding(Judgement.Finding f) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", f.path());
        map.put("unit", f.notation().siUnit());
        put(map, "prior_", f.prior());
        put(map, "", Optional.of(f.posterior()));
        if (!f.source().isEmpty()) {
            map.put("prior_source", f.source());
        }
        return map;
    }
}
