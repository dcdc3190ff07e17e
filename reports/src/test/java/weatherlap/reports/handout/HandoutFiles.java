package weatherlap.reports.handout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import weatherlap.reports.inputs.InputPaths;
import weatherlap.reports.inputs.Inputs;
import weatherlap.reports.jobs.HandoutWishes;
import weatherlap.reports.jobs.MakeHandout;
import weatherlap.reports.output.Messages;
import weatherlap.reports.output.OutputRequest;
import weatherlap.reports.page.Paper;
import weatherlap.sim.house.House;

/** Handouts for tests. */
public final class HandoutFiles {
    static final String LONG = "L".repeat(160);
    static final String HEBREW = "\u05D1\u05D9\u05EA";
    static final String GREEK = "\u03BF\u03AF\u03BA\u03BF\u03C2";
    static final String CHINESE = "\u7A97";

    /** Says nothing, draws no bar. */
    public static final Messages SILENT = new Messages() {
        @Override
        public void note(String line) {
            // not looked at
        }

        @Override
        public void result(String line) {
            // not looked at
        }

        @Override
        public Progress progress(String task, int steps) {
            return new Progress() {
                @Override
                public void step() {
                    // not looked at
                }

                @Override
                public void close() {
                    // nothing is open
                }
            };
        }
    };

    private HandoutFiles() {}

    /** The handout of a house, in plain English. */
    static HandoutMaker maker(Inputs inputs, House house) {
        return maker(inputs, house, SheetWords.plain());
    }

    static HandoutMaker maker(Inputs inputs, House house, SheetWords words) {
        return maker(inputs, house, words, Optional.empty());
    }

    static HandoutMaker maker(Inputs inputs, House house, SheetWords words, Optional<String> line) {
        return HandoutMaker.of(house, inputs.simulator(), words, line);
    }

    public static InputPaths demo() {
        return new InputPaths(Optional.empty(), Optional.empty(), Optional.empty(), List.of("draws=50"));
    }

    public static void write(InputPaths paths, String house, Paper paper, Path out) {
        write(paths, house, paper, HandoutWishes.NONE, out);
    }

    public static void write(InputPaths paths, String house, Paper paper, HandoutWishes wishes, Path out) {
        try {
            new MakeHandout(paths, house, paper, wishes, new OutputRequest(out, false)).run(SILENT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A house whose label tries to be more than a name, and whose keys are as long as they may be. */
    public static InputPaths hostile(Path in) {
        String label =
                "=1+1 <script>alert(1)</script> \"\"q\"\" & " + HEBREW + " " + GREEK + " " + CHINESE + " " + LONG;
        String wall = "W".repeat(64);
        String rest = ",aluminum,sound,drywall,1,unknown,reversed,unknown,yes\n";
        try {
            Files.createDirectories(in);
            Files.writeString(
                    in.resolve("site.toml"), "place = \"<script>alert(1)</script> =1+1\"\nweather = [\"newark\"]\n");
            Files.writeString(
                    in.resolve("houses.csv"),
                    "house_id,label,year_built,terrain,cladding,barrier,storeys\nh1,\"" + label
                            + "\",1962,suburban,vinyl_siding,building_paper,1\n");
            Files.writeString(
                    in.resolve("elevations.csv"),
                    "house_id,elevation_id,bearing_deg,width_ft,eave_height_ft,overhang_in,course_exposure_in,panel_length_in\n"
                            + "h1," + wall + ",2,30,9,12,8,144\nh1,north,0,30,9,0,8,144\n"
                            + "h1,back + left,182,30,9,0,8,144\n");
            Files.writeString(
                    in.resolve("openings.csv"),
                    "house_id,elevation_id,opening_id,room,operation,frame_width_in,frame_height_in,left_in,sill_height_in,"
                            + "existing_material,frame_condition,interior_return,return_layers,head_lap,jamb_lap,sill_lap,stain\n"
                            + "h1," + wall + "," + "M".repeat(64) + ",bedroom,single_hung,36,54,24,30" + rest
                            + "h1," + wall + ",b,kitchen,slider,48,36,96,42" + rest
                            + "h1,north,a,living,picture,120,48,60,30" + rest
                            + "h1,back + left,a,basement,awning,24,24,60,30" + rest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new InputPaths(Optional.of(in), Optional.empty(), Optional.empty(), List.of("draws=50"));
    }

    /** Thirty windows, no two alike, on eight walls, and every name 200 letters long, or as long as a key may be. */
    public static InputPaths crowded(Path in) {
        StringBuilder walls = new StringBuilder("house_id,elevation_id,bearing_deg,width_ft,eave_height_ft,overhang_in,"
                + "course_exposure_in,panel_length_in\n");
        StringBuilder openings = new StringBuilder("house_id,elevation_id,opening_id,room,operation,frame_width_in,"
                + "frame_height_in,left_in,sill_height_in,existing_material,frame_condition,interior_return,return_layers,"
                + "head_lap,jamb_lap,sill_lap,stain\n");
        String[] rooms = {"bedroom", "kitchen", "basement", "living"};
        String[] operations = {"single_hung", "double_hung", "slider", "casement", "awning", "picture"};
        for (int wall = 0; wall < 8; wall++) {
            walls.append("h1,%s%d,%d,200,24,%d,8,144%n".formatted("w".repeat(60), wall, 44 * wall, 3 * wall));
        }
        for (int i = 0; i < 30; i++) {
            openings.append("h1,%s%d,%s%d,%s,%s,%d,%d,%d,%d,aluminum,rotten,drywall,1,reversed,missing,reversed,yes%n"
                    .formatted(
                            "w".repeat(60),
                            i % 8,
                            "k".repeat(60),
                            i,
                            rooms[i % rooms.length],
                            operations[i % operations.length],
                            30 + i,
                            36 + i,
                            24 + i / 8 * 120,
                            24 + 3 * i));
        }
        try {
            Files.createDirectories(in);
            Files.writeString(
                    in.resolve("houses.csv"),
                    "house_id,label,year_built,terrain,cladding,barrier,storeys\nh1," + "Long name ".repeat(20)
                            + ",1962,farmland,vinyl_siding,building_paper,2\n");
            Files.writeString(
                    in.resolve("site.toml"), "place = \"" + "Long place ".repeat(18) + "\"\nweather = [\"newark\"]\n");
            Files.writeString(in.resolve("elevations.csv"), walls);
            Files.writeString(in.resolve("openings.csv"), openings);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new InputPaths(Optional.of(in), Optional.empty(), Optional.empty(), List.of("draws=50"));
    }
}
