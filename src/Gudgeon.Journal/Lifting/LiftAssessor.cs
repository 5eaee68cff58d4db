using Gudgeon.Sums;
using Gudgeon.Sums.Lifting;

namespace Gudgeon.Journal;

/// <summary>Judges a lift as far as it is told: each sum feeds the next, and one that refuses stops those behind it.</summary>
public static class LiftAssessor
{
    public const string LoadId = "load", HangId = "hang", GearId = "gear", PlateId = "plate", TippingId = "tipping", HeadroomId = "headroom", FloorId = "floor";

    public static LiftView Of(Bench bench)
    {
        var checks = new List<LiftCheck>();
        var notes = new List<string>();
        var load = Load(bench, notes, checks);
        var hung = Hang(bench.Rig, load?.Load, checks);
        Gear(bench.Rig, hung, checks);
        var stroke = Crane(bench, load?.Load, hung, checks);
        var headroom = Room(bench, hung, stroke, checks);
        var (sweep, moves) = Floor(bench, stroke, checks);
        return new LiftView(load?.Load, notes, checks, hung, stroke, headroom, sweep, moves, LiftStand.Check(bench, load?.Load), LiftStand.BeforeTurning(bench), LiftList.Open(bench));
    }

    private static LiftLoad? Load(Bench bench, List<string> notes, List<LiftCheck> checks)
    {
        const string title = "What hangs";
        var found = LiftLoad.Of(bench, notes);
        checks.Add(found.TryGet(out var load) ? LiftCheck.Good(LoadId, title, LiftingCautions.Hanging, load.Figures, load.Doubts)
            : bench.WholeMass is null ? LiftCheck.Untold(LoadId, title, LiftingCautions.Hanging, found.Refusals)
            : LiftCheck.Bad(LoadId, title, LiftingCautions.Hanging, found.Refusals));
        return load;
    }

    private static HungLoad? Hang(RigTold? rig, HangingLoad? load, List<LiftCheck> checks)
    {
        const string title = "How it hangs";
        if (rig is null)
        {
            checks.Add(LiftCheck.Untold(HangId, title, LiftingCautions.Hanging, "rig", "one to four legs, and where each holds the engine", "Tell the rig"));
            return null;
        }

        if (load is null)
        {
            checks.Add(LiftCheck.Waiting(HangId, title, LiftingCautions.Hanging, "what hangs"));
            return null;
        }

        var hangs = HungLoad.Of(rig, load);
        checks.Add(hangs.TryGet(out var hung) ? LiftCheck.Good(HangId, title, LiftingCautions.Hanging, hung.Figures, hung.Warnings) : LiftCheck.Bad(HangId, title, LiftingCautions.Hanging, hangs.Refusals));
        return hung;
    }

    private static void Gear(RigTold? rig, HungLoad? hung, List<LiftCheck> checks)
    {
        const string title = "Gear";
        if (rig is null || hung is null)
        {
            checks.Add(LiftCheck.Waiting(GearId, title, LiftingCautions.Gear, "how it hangs"));
            return;
        }

        var use = LiftGear.Use(rig, hung);
        if (!use.TryGet(out var gear))
        {
            checks.Add(LiftCheck.Bad(GearId, title, LiftingCautions.Gear, use.Refusals));
            return;
        }

        var workings = LiftWorkings.Pieces(gear);
        checks.Add(LiftCheck.Good(GearId, title, LiftingCautions.Gear, [.. gear.Pieces.Select((piece, i) => new LiftFigure($"{(i == 0 ? "weakest: " : "")}{piece.Name}, of {LiftText.Show(piece.Rating.Kilograms, "kg")}", LiftText.Percent(piece.Part), workings[i]))]));
    }

    private static IReadOnlyList<CranePose> Crane(Bench bench, HangingLoad? load, HungLoad? hung, List<LiftCheck> checks)
    {
        const string plate = "Crane's plate", tipping = "Standing of the crane";
        if (bench.Crane is not { } told)
        {
            checks.Add(LiftCheck.Untold(PlateId, plate, LiftingCautions.Crane, "crane", "its boom, plate, ram and wheels", "Tell the crane"));
            checks.Add(LiftCheck.Waiting(TippingId, tipping, LiftingCautions.Crane, "the crane"));
            return [];
        }

        var along = CraneBoom.Stroke(LiftCrane.Geometry(told), told.Hole - 1, LiftCrane.Poses);
        if (!along.TryGet(out var stroke))
        {
            checks.Add(LiftCheck.Bad(PlateId, plate, LiftingCautions.Crane, along.Refusals));
            checks.Add(LiftCheck.Waiting(TippingId, tipping, LiftingCautions.Crane, "a crane that can be"));
            return [];
        }

        if (load is null || hung is null)
        {
            checks.Add(LiftCheck.Waiting(PlateId, plate, LiftingCautions.Crane, "how it hangs"));
            checks.Add(LiftCheck.Waiting(TippingId, tipping, LiftingCautions.Crane, "how it hangs"));
            return stroke;
        }

        var onCrane = LiftCrane.OnCrane(load, bench.Rig!, hung);
        var onPlate = LiftCrane.Plate(told, onCrane);
        checks.Add(onPlate.TryGet(out var figures) ? LiftCheck.Good(PlateId, plate, LiftingCautions.Crane, figures) : LiftCheck.Bad(PlateId, plate, LiftingCautions.Crane, onPlate.Refusals));
        var stands = LiftCrane.Stands(told, onCrane, stroke);
        checks.Add(stands.TryGet(out var standing) ? LiftCheck.Good(TippingId, tipping, LiftingCautions.Crane, standing.Figures, standing.Warnings) : LiftCheck.Bad(TippingId, tipping, LiftingCautions.Crane, stands.Refusals));
        return stroke;
    }

    private static HeadroomAnswer? Room(Bench bench, HungLoad? hung, IReadOnlyList<CranePose> stroke, List<LiftCheck> checks)
    {
        const string title = "Headroom";
        if (bench.LiftPlace is not { } place)
        {
            checks.Add(LiftCheck.Untold(HeadroomId, title, LiftingCautions.Hanging, "place", "heights of roof, sill, crane legs and engine", "Tell the place"));
            return null;
        }

        if (hung is null || stroke.Count == 0)
        {
            checks.Add(LiftCheck.Waiting(HeadroomId, title, LiftingCautions.Hanging, hung is null ? "how it hangs" : "the crane"));
            return null;
        }

        var spare = LiftRoom.Spare(bench, place, bench.Crane!, hung, stroke);
        if (!spare.TryGet(out var found))
        {
            checks.Add(LiftCheck.Bad(HeadroomId, title, LiftingCautions.Hanging, spare.Refusals));
            return null;
        }

        checks.Add(found.Answer.Passes ? LiftCheck.Good(HeadroomId, title, LiftingCautions.Hanging, found.Figures, found.Warnings) : LiftCheck.Bad(HeadroomId, title, LiftingCautions.Hanging, [.. LiftRoom.Refusals(found.Answer), .. found.Warnings]));
        return found.Answer;
    }

    private static (SweptWay?, IReadOnlyList<string>) Floor(Bench bench, IReadOnlyList<CranePose> stroke, List<LiftCheck> checks)
    {
        const string title = "Across the floor";
        if (bench.LiftPlace is not { HasFloor: true } place)
        {
            checks.Add(LiftCheck.Untold(FloorId, title, LiftingCautions.Crane, "floor", "what stands on it, and the crane's way", "Tell the place with its floor, if the crane is to go anywhere"));
            return (null, []);
        }

        if (stroke.Count == 0)
        {
            checks.Add(LiftCheck.Waiting(FloorId, title, LiftingCautions.Crane, "the crane"));
            return (null, []);
        }

        var swept = LiftFloor.Sweep(place, bench.Crane!, stroke, _ => true);
        if (!swept.TryGet(out var way))
        {
            checks.Add(LiftCheck.Bad(FloorId, title, LiftingCautions.Crane, swept.Refusals));
            return (null, []);
        }

        if (way.Clear)
        {
            checks.Add(LiftCheck.Good(FloorId, title, LiftingCautions.Crane, [.. way.Passes.Select(LiftFloor.Figure)]));
            return (way, []);
        }

        checks.Add(LiftCheck.Bad(FloorId, title, LiftingCautions.Crane, [.. way.Passes.Where(pass => pass.Spare.Millimetres <= 0).Select(pass => new Refusal($"way past {pass.Obstacle}",
            $"touched with the post at {LiftText.Show(pass.At.At.X, "mm")}, {LiftText.Show(pass.At.At.Y, "mm")}", "a way that touches nothing", "Give the way another stop, or move what stands there"))]));
        return (way, LiftFloor.Moves(place, bench.Crane!, stroke, way));
    }
}
