package trimwright.mesh;

import trimwright.finding.Code;
import trimwright.finding.Place;

/** Coordinates in text files, and the complaints about words that are none. */
final class TextNumbers {

    private static final int SHOWN = 40;

    private TextNumbers() {}

    /**
     * Reads the word at which the scanner stands as a coordinate, into its {@code value}, and complains where that cannot be
     * used.
     *
     * @param ofWhat {@code triangle} or {@code vertex}, whose {@code number} goes into the complaint
     * @return false where the word is no number at all, so that the text has lost its order
     */
    static boolean readCoordinate(ByteScanner text, Problems problems, String ofWhat, long number) {
        ByteScanner.Reading reading = text.number();
        if (reading == ByteScanner.Reading.NUMBER && Math.abs(text.value()) <= MeshFiles.LARGEST_COORDINATE) {
            return true;
        }
        Place place = new Place.AtLine(problems.file(), text.line());
        String found = FileHead.printable(text.word(), SHOWN);
        switch (reading) {
            case NUMBER -> problems.badCoordinate(text.value(), place, ofWhat, number);
            case NOT_FINITE -> problems.tally(Code.MESH_COORDINATE_NOT_FINITE, place, "found", found, ofWhat, number);
            case DECIMAL_COMMA ->
                problems.tally(Code.MESH_DECIMAL_COMMA, place, "found", found, "expected", found.replace(',', '.'));
            case NO_NUMBER -> problems.add(Code.MESH_TEXT_UNEXPECTED, place, "found", found, "expected", "number");
        }
        return reading != ByteScanner.Reading.NO_NUMBER;
    }
}
