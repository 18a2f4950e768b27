package dev.warmlane.weather;

/**
 * How well global irradiance equals diffuse plus beam, GHI = DHI + DNI cos z, over the hours with GHI above 50 W/m²,
 * and at which time shift it does so best. Shifts are in hours after the file's own time label: -0.5 is the middle of
 * the hour that ends at the label; they are told with the UTC offset of the header, even where that was replaced.
 *
 * @param statedShiftHours what the format says
 * @param statedRmseWm2 root mean square of the residual there, W/m²
 * @param bestShiftHours where the residual is smallest
 * @param usedShiftHours what the year's sun positions use in most months
 * @param usedRmseWm2 root mean square of the residual as used, months with a shift of their own included, W/m²
 * @param hours how many hours were tested
 */
public record Closure(
        double statedShiftHours,
        double statedRmseWm2,
        double bestShiftHours,
        double usedShiftHours,
        double usedRmseWm2,
        int hours) {}
