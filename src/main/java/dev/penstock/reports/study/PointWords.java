package dev.penstock.reports.study;

import dev.penstock.quantities.Notation;
import dev.penstock.reports.text.ShellWords;
import dev.penstock.study.search.Objective;
import dev.penstock.study.search.Question;
import dev.penstock.study.space.Constraint;
import dev.penstock.study.space.StudyCase;
import dev.penstock.study.space.StudyFigure;
import dev.penstock.study.space.StudyPoint;
import dev.penstock.study.space.StudySpace;
import dev.penstock.study.space.Variable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What answers of studies say of a point: its inputs, its figures, which constraints it keeps, how to see it again. */
final class PointWords {

    private final Question question;

    PointWords(Question question) {
        this.question = question;
    }

    /** The inputs that vary, as documents have them. */
    static List<Map<String, Object>> vary(StudySpace space) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (Variable variable : space.variables()) {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("path", variable.path());
            map.put("unit", variable.unit());
            if (variable instanceof Variable.Named named) {
                map.put("values", named.documents());
            } else {
                map.put("from", variable.document(variable.at(0)));
                map.put("to", variable.document(variable.at(1)));
            }
            list.add(map);
        }
        return list;
    }

    /** An objective, as documents have it. */
    static Map<String, Object> goal(Objective objective) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("path", objective.figure().path());
        map.put("goal", objective.goal());
        return map;
    }

    /** Value of an input for people. */
    static String text(Variable variable, double value) {
        return variable.document(value) instanceof Double number
                ? Notation.ofUnit(variable.unit()).writeWithUnit(number)
                : variable.document(value).toString();
    }

    static String text(StudyFigure figure, double value) {
        return Double.isNaN(value) ? "-" : figure.notation().writeWithUnit(value);
    }

    /** Figures of a point in SI; whether limits are kept as the truth of it. */
    Map<String, Object> figures(StudyPoint point) {
        Map<String, Object> map = new LinkedHashMap<>();
        List<StudyFigure> figures = question.figures();
        int objectives = question.objectives().size();
        for (int k = 0; k < figures.size(); k++) {
            double value = point.figures()[k];
            int constraint = k - objectives;
            boolean limits = constraint >= 0
                    && constraint < question.constraints().size()
                    && question.constraints().get(constraint).ofLimits();
            if (!Double.isNaN(value)) {
                map.put(figures.get(k).path(), limits ? (Object) (value >= 0) : (Object) value);
            }
        }
        return map;
    }

    Map<String, Object> document(StudySpace space, StudyPoint point) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("inputs", space.document(point.values()));
        map.put("figures", figures(point));
        map.put("feasible", question.feasible(point));
        point.failure().ifPresent(f -> map.put("failure", f.sentence()));
        return map;
    }

    List<Map<String, Object>> constraints(StudyPoint point) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (int k = 0; k < question.constraints().size(); k++) {
            Constraint constraint = question.constraints().get(k);
            double value = point.figures()[question.objectives().size() + k];
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("constraint", constraint.text());
            map.put("path", constraint.figure().path());
            if (!constraint.ofLimits()) {
                map.put("at_most", constraint.atMost());
                map.put("bound", constraint.bound());
                if (!Double.isNaN(value)) {
                    map.put("value", value);
                }
            }
            map.put("kept", constraint.kept(value));
            list.add(map);
        }
        return list;
    }

    /** Which constraints a point does not keep, for people; empty text if it keeps all. */
    String missed(StudyPoint point) {
        List<String> missed = new ArrayList<>();
        for (int k = 0; k < question.constraints().size(); k++) {
            Constraint constraint = question.constraints().get(k);
            if (!constraint.kept(point.figures()[question.objectives().size() + k])) {
                missed.add(constraint.readable());
            }
        }
        return String.join("; ", missed);
    }

    /** The command that shows a point as it is, on this machine. */
    String here(StudySpace space, StudyPoint point) {
        return again(space, point, question.subject().file());
    }

    /** The command that shows a point as it is, beside the file: pages go elsewhere. */
    String again(StudySpace space, StudyPoint point) {
        return again(space, point, question.subject().file().getFileName());
    }

    private String again(StudySpace space, StudyPoint point, Path file) {
        StudyCase subject = question.subject();
        List<String> words =
                new ArrayList<>(List.of("penstock", subject.ofVehicle() ? "size" : "balance", file.toString()));
        Map<String, String> all = new LinkedHashMap<>(subject.changes());
        all.putAll(space.changes(point.values()));
        all.forEach((path, value) -> words.addAll(List.of("--set", path + "=" + value)));
        return ShellWords.line(words);
    }
}
