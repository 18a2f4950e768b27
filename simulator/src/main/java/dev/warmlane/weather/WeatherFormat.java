package dev.warmlane.weather;

/** One file format. It turns text into rows and judges nothing that another format would have to judge as well. */
interface WeatherFormat {

    /** The name that a person knows the format by. */
    String title();

    /** Whether the content looks like this format. */
    boolean recognises(FileText text);

    /** The rows of the file. */
    RawWeather read(FileText text) throws WeatherFileException;
}
