package dev.warmlane.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How far the seasons of a mounting study are to be trusted, and how far their lead on each other. A season's doubt is
 * simulated when it is first asked for, on all cores; for one thread.
 */
public final class MountingBands {

    /**
     * What is varied to see how far one mounting leads another: what every forecast is varied by, and the wind along the roof, that between the
     * rows and how light the roof is, which say little of a pool but much of racks against mats. Of the doubt that all of
     * {@link Parameters#ALL} make of the lead of one mounting on the next these make nine tenths and more in the examples
     * (measured).
     */
    public static final List<Parameter> DOUBTS = Stream.concat(
                    SeasonBand.USUAL.stream(),
                    Stream.of(RoofParameters.WIND_RATIO, RoofParameters.ALBEDO, CollectorParameters.INNER_WIND))
            .toList();

    private final SharedForcing forcing;
    private final List<Known> known = new ArrayList<>();

    /** Of the mountings of a study. */
    public MountingBands(MountingStudy study) {
        this.forcing = new SharedForcing(study.weather());
    }

    /**
     * The doubt of a mounting's season by {@link SeasonBand#USUAL}, as its forecast has it.
     *
     * @param result a result of the study
     */
    public SeasonBand of(MountingResult result) {
        SeasonBand all = withMounting(result);
        return new SeasonBand(
                all.likely(),
                all.doubts().stream()
                        .filter(doubt -> SeasonBand.USUAL.stream()
                                .anyMatch(usual -> usual.name().equals(doubt.name())))
                        .toList(),
                all.fitted());
    }

    /** Two mountings with the same doubts under both, all of {@link #DOUBTS}. */
    public PairedBand of(MountingResult one, MountingResult other) {
        return new PairedBand(withMounting(one), withMounting(other));
    }

    private SeasonBand withMounting(MountingResult result) {
        return known.stream()
                .filter(one -> one.result.equals(result))
                .findFirst()
                .map(Known::band)
                .orElseGet(() -> simulated(result));
    }

    private SeasonBand simulated(MountingResult result) {
        SeasonBand band = SeasonBand.of(result.forecast(), DOUBTS, forcing, Runs.onAllCores());
        known.add(new Known(result, band));
        return band;
    }

    private record Known(MountingResult result, SeasonBand band) {}
}
