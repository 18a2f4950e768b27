package dev.warmlane.hydraulics;

/**
 * A run of round pipe with what stands in it.
 *
 * @param innerM inner diameter, m, above 0
 * @param lengthM length, m, 0 or more
 * @param roughnessM roughness of its wall, m, 0 or more
 * @param lossFactor sum of the loss factors of its bends, tees, valves, inlet and outlet, on the dynamic pressure in it
 */
public record Pipe(double innerM, double lengthM, double roughnessM, double lossFactor) {

    /** Refuses what is no pipe. */
    public Pipe {
        if (!(innerM > 0) || !(lengthM >= 0) || !(roughnessM >= 0) || !(lossFactor >= 0)) {
            throw new IllegalArgumentException("a pipe has a bore above 0 and neither length, roughness nor losses"
                    + " below 0, was " + innerM + " m, " + lengthM + " m, " + roughnessM + " m, " + lossFactor);
        }
    }

    /** Area of its bore, m². */
    public double areaM2() {
        return Math.PI * innerM * innerM / 4;
    }

    /** Water in it, m³. */
    public double contentM3() {
        return areaM2() * lengthM;
    }

    /** Speed of a flow in it, m/s. */
    public double speedMs(double kgS, Liquid liquid) {
        return kgS / (liquid.densityKgM3() * areaM2());
    }

    /** Reynolds number of a flow in it. */
    public double reynolds(double kgS, Liquid liquid) {
        return 4 * Math.abs(kgS) / (Math.PI * innerM * liquid.viscosityPaS());
    }

    /** Pressure that a flow uses up in it, Pa: (f L/d + K) ρ v²/2; below 0 for a flow the other way. */
    public double dropPa(double kgS, Liquid liquid) {
        if (kgS == 0) {
            return 0;
        }
        double factor = Friction.factor(reynolds(kgS, liquid), roughnessM / innerM);
        double dynamic = liquid.dynamicPa(speedMs(kgS, liquid));
        return Math.copySign((factor * lengthM / innerM + lossFactor) * dynamic, kgS);
    }

    /** It as a way for a liquid. */
    public Way way(Liquid liquid) {
        return kgS -> dropPa(kgS, liquid);
    }

    /** The same pipe of another length, m, without the bends. */
    public Pipe straight(double metres) {
        return new Pipe(innerM, metres, roughnessM, 0);
    }
}
