package dev.warmlane.study;

import java.util.List;
import java.util.stream.Stream;

/** How far the seasons of a mounting study are to be trusted, and how far their lead on each other; for one thread. */
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

    private final SeasonBands bands;

    /**
     * Of mountings in one weather.
     *
     * @param bands of that weather
     */
    public MountingBands(SeasonBands bands) {
        this.bands = bands;
    }

    /** Of the mountings of a study, on all cores. */
    public MountingBands(MountingStudy study) {
        this(new SeasonBands(new SharedForcing(study.weather()), Runs.onAllCores()));
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
        return bands.of(result.forecast().installation(), DOUBTS);
    }
}
