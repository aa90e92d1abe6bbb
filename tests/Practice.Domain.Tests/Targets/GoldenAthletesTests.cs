using System.Globalization;
using System.Text;
using Practice.Domain.Targets;

namespace Practice.Domain.Tests.Targets;

/// <summary>
/// Three athletes, every target and its basis as words. A change here is a change of what practitioners read: look at
/// the difference before copying the received file from the output folder to the approved one.
/// </summary>
public class GoldenAthletesTests
{
    [Theory]
    [InlineData("light-woman")]
    [InlineData("middling-man")]
    [InlineData("heavy-man")]
    public void Targets_of_a_golden_athlete_read_as_approved(string name)
    {
        var athlete = name switch
        {
            "light-woman" => Athlete.LightWoman,
            "middling-man" => Athlete.MiddlingMan,
            _ => Athlete.HeavyMan,
        };
        var received = Words(athlete.Targets());
        var path = Path.Combine(AppContext.BaseDirectory, "Targets", "Golden", $"{name}.txt");
        var approved = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        if (received != approved)
            File.WriteAllText(Path.ChangeExtension(path, ".received.txt"), received);
        Assert.Equal(approved, received);
    }

    private static string Words(LoadingTargets targets)
    {
        var text = new StringBuilder();
        foreach (var target in targets.All)
            Write(text, target);
        text.Append("Muscle glycogen, mmol/kg\n");
        foreach (var point in targets.Glycogen.Where(p => p.Hour % 12 == 0))
            text.Append(
                CultureInfo.InvariantCulture,
                $"    {point.Hour} h: {point.Expected:F1} ({point.Low:F1} to {point.High:F1})\n"
            );
        return text.ToString();
    }

    private static void Write(StringBuilder text, Target target)
    {
        text.Append(
            CultureInfo.InvariantCulture,
            $"{target.Name}: {TargetWords.Aim(target)} [{TargetWords.Band(target)}]\n"
        );
        text.Append(CultureInfo.InvariantCulture, $"    = {target.Basis.Formula}\n");
        foreach (var input in target.Basis.Inputs)
            text.Append(CultureInfo.InvariantCulture, $"    {input.Name}: {input.Value}\n");
        text.Append("    ").AppendJoin(", ", target.Basis.Sources.Select(s => s.Key)).Append('\n');
        if (target.Basis.Note is { } note)
            text.Append(CultureInfo.InvariantCulture, $"    {note}\n");
    }
}
