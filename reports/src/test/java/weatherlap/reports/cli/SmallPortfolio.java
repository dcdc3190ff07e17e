package weatherlap.reports.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A portfolio of two houses as a user would write it, with labels that try to be more than labels. */
final class SmallPortfolio {
    static final String HOSTILE = "=1+1 <script>alert(1)</script> \"quoted\" & \u05D1\u05D9\u05EA";

    private SmallPortfolio() {}

    static Path write(Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("houses.csv"), """
                house_id,label,year_built,terrain,cladding,barrier,storeys
                h1,"%s",1962,suburban,vinyl_siding,building_paper,1
                h2,%s,1998,farmland,brick_veneer,housewrap,2
                """.formatted(HOSTILE.replace("\"", "\"\""), "L".repeat(200)));
        Files.writeString(folder.resolve("elevations.csv"), """
                house_id,elevation_id,bearing_deg,width_ft,eave_height_ft,overhang_in,course_exposure_in,panel_length_in
                h1,north,0,30,9,12,8,144
                h1,south,180,30,9,0,8,144
                h2,west,270,40,18,6,,
                """);
        String rest = ",aluminum,sound,drywall,1,unknown,unknown,unknown,unknown\n";
        Files.writeString(
                folder.resolve("openings.csv"),
                "house_id,elevation_id,opening_id,room,operation,frame_width_in,frame_height_in,left_in,sill_height_in,"
                        + "existing_material,frame_condition,interior_return,return_layers,head_lap,jamb_lap,sill_lap,stain\n"
                        + "h1,north,a,bedroom,single_hung,36,54,24,30" + rest
                        + "h1,north,b,kitchen,slider,48,36,96,42" + rest
                        + "h1,south,a,living,picture,60,48,60,30" + rest
                        + "h2,west,a,bath,awning,24,24,24,150" + rest);
        return folder;
    }
}
