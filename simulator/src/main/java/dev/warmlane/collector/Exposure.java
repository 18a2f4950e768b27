package dev.warmlane.collector;

import org.jspecify.annotations.Nullable;

/**
 * What reaches a mounted collector in each hour, whatever the collector is: light after incidence, long-wave, and the
 * films of its faces, per m². One for each place in an array that sees something different.
 */
final class Exposure {

    /** Light on the front in the plane of the collector, before incidence, W/m². */
    final double[] irradiance;

    /** Light on the front after incidence, K·G, W/m². */
    final double[] modifiedFront;

    /** Light on an open back after incidence, K·G, W/m². */
    final double[] modifiedBack;

    /** Long-wave that arrives at the front, W/m². */
    final double[] longWaveFront;

    /** Long-wave that arrives at an open back, W/m². */
    final double[] longWaveBack;

    final FaceFilm front;

    /** The film of an open back; null where the back is closed. */
    final @Nullable FaceFilm back;

    /** What a closed back lets through; nothing where it is open. */
    final ClosedBack closed;

    /** What more long-wave arrives while no water runs. */
    final DryView dry;

    /** Height of the collector's middle above the roof, m. */
    final double aboveRoofM;

    /** Wind at it over what is usual there. */
    final double windShare;

    /** Of a collector on a roof. */
    Exposure(int hours, FaceFilm front, @Nullable FaceFilm back, ClosedBack closed) {
        this(hours, front, back, closed, DryView.same(hours), 0, 1);
    }

    /** Of a collector that stands alone with a closed back, for one moment. */
    static Exposure atMoment(FaceFilm front, ClosedBack closed) {
        return new Exposure(1, front, null, closed);
    }

    Exposure(
            int hours,
            FaceFilm front,
            @Nullable FaceFilm back,
            ClosedBack closed,
            DryView dry,
            double aboveRoofM,
            double windShare) {
        this.irradiance = new double[hours];
        this.modifiedFront = new double[hours];
        this.modifiedBack = new double[hours];
        this.longWaveFront = new double[hours];
        this.longWaveBack = new double[hours];
        this.dry = dry;
        this.aboveRoofM = aboveRoofM;
        this.windShare = windShare;
        this.front = front;
        this.back = back;
        this.closed = closed;
    }
}
