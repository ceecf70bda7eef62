package dev.penstock.study.sample;

import dev.penstock.errors.InvalidInput;
import dev.penstock.numerics.design.DesignKind;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.StudyFile;
import dev.penstock.study.StudyInputs;
import dev.penstock.study.space.StudyCase;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A study of many points as a study file, and back: the file beside the rows says all that they are made from. */
public final class SampleStudy {

    private static final String DESIGN = "design";
    private static final String POINTS = "points";
    private static final String SEED = "seed";
    private static final String BATCH = "batch";
    private static final String FIGURE = "figure";
    private static final String SUBJECT_TO = "subject_to";

    private SampleStudy() {}

    /**
     * @param request what is asked for
     * @param files the case, as the study file is to name it
     * @param changes values that replace or add to what the case says
     * @return the study file
     */
    public static StudyFile file(SampleRequest request, List<String> files, Map<String, String> changes) {
        Map<String, List<String>> further = new LinkedHashMap<>();
        further.put(DESIGN, List.of(request.design().key()));
        further.put(POINTS, List.of(Integer.toString(request.points())));
        further.put(SEED, List.of(Integer.toString(request.seed())));
        further.put(BATCH, List.of(Integer.toString(request.batch())));
        if (!request.figures().isEmpty()) {
            further.put(FIGURE, request.figures());
        }
        if (!request.subjectTo().isEmpty()) {
            further.put(SUBJECT_TO, request.subjectTo());
        }
        return new StudyFile(request.name(), StudyFile.Kind.SAMPLE, files, changes, request.vary(), 0, false, further);
    }

    /**
     * @param runs reads and balances concepts
     * @param file study file
     * @return the study
     * @throws InvalidInput if it cannot be used
     */
    public static SamplePlan read(EngineRuns runs, Path file) {
        StudyFile study = StudyFile.read(file);
        Path subject =
                file.toAbsolutePath().resolveSibling(study.cases().get(0)).normalize();
        return SamplePlan.of(StudyCase.open(runs, subject, study.changes()), request(study));
    }

    /**
     * @param study study file of a sample
     * @return what it asks for
     * @throws InvalidInput if it cannot be used
     */
    public static SampleRequest request(StudyFile study) {
        Map<String, List<String>> said = study.further();
        return new SampleRequest(
                study.name(),
                study.vary(),
                design(one(said, DESIGN, DesignKind.SOBOL.key())),
                Integer.parseInt(one(said, POINTS, "0")),
                Integer.parseInt(one(said, SEED, "1")),
                Integer.parseInt(one(said, BATCH, Integer.toString(StudyInputs.USUAL_BATCH))),
                said.getOrDefault(FIGURE, List.of()),
                said.getOrDefault(SUBJECT_TO, List.of()));
    }

    private static String one(Map<String, List<String>> said, String key, String usual) {
        return said.getOrDefault(key, List.of(usual)).get(0);
    }

    /**
     * @param key name of a design
     * @return the design
     * @throws InvalidInput if there is none
     */
    public static DesignKind design(String key) {
        for (DesignKind one : DesignKind.values()) {
            if (one.key().equals(key)) {
                return one;
            }
        }
        throw new InvalidInput("", "--design", key, "allowed are sobol, latin-hypercube and grid");
    }
}
