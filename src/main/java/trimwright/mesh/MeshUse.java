package trimwright.mesh;

/** What a mesh is declared to be, as far as its surface is concerned. */
public enum MeshUse {
    /** The outer surface of a watertight hull. */
    SEALED("sealed"),
    /** The outer surface of a free-flooding shell; it may be open. */
    SKIN("skin"),
    /** The surface of the plastic itself, inside and out. */
    PRINTED("printed"),
    /** The surface of a body other than a hull. */
    SOLID("solid");

    private final String symbol;

    MeshUse(String symbol) {
        this.symbol = symbol;
    }

    /** The use as the boat file writes it, where it does. */
    public String symbol() {
        return symbol;
    }

    boolean needsClosed() {
        return this != SKIN;
    }

    boolean isOuterSurface() {
        return this == SEALED || this == SKIN;
    }
}
