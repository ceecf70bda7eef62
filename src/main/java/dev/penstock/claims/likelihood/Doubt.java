package dev.penstock.claims.likelihood;

/**
 * How far an engine may be from what is predicted for it, once its unknowns are known.
 * <pre>s² = a² + (b p)²,  p = prediction</pre>
 *
 * @param fixed the part a that is the same whatever is predicted, SI
 * @param share the part b that goes with the prediction (-)
 */
public record Doubt(double fixed, double share) {

    public Doubt {
        if (!(fixed >= 0 && share >= 0)) {
            throw new IllegalArgumentException("a doubt is not negative: " + fixed + ", " + share);
        }
    }

    /**
     * Of what is seen at one engine. What inputs do goes with the prediction, except for figures that vary with the back pressure and
     * may be small beside what moves them.
     *
     * @param path path of the figure; empty for an input
     * @param predicted its prediction there, SI; NaN where there is none
     * @param held standard deviation by inputs that are held at their most likely values, SI
     * @param explained standard deviation by all uncertain inputs, followed or held, SI
     * @param whole what the model misses built engines by, all causes together (-)
     */
    static Doubt of(String path, double predicted, double held, double explained, double whole) {
        if (!Double.isFinite(predicted) || predicted == 0) {
            return new Doubt(held, whole);
        }
        double size = Math.abs(predicted);
        double beyond = Math.sqrt(Math.max(0, whole * whole - Math.pow(explained / size, 2)));
        return ChamberAlone.looseness(path) > 1
                ? new Doubt(held, beyond)
                : new Doubt(0, Math.hypot(held / size, beyond));
    }

    /**
     * @param predicted a prediction, SI
     * @return its standard deviation, SI
     */
    public double of(double predicted) {
        return Math.hypot(fixed, share * predicted);
    }
}
