using System.Globalization;
using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Reports.Kit.Text;
using LureSim.Studies.Cast;
using LureSim.Studies.Sweep;
using nietras.SeparatedValues;

namespace LureSim.Reports.Cast;

/// <summary>A comparison of casts as tables.</summary>
public static class CastAcrossCsv
{
    /// <summary>The verdict in words.</summary>
    /// <param name="step">From one set-up to the next.</param>
    public static string Verdict(CastStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Notices ? "you will notice" : "you will not";
    }

    /// <summary>Share of the draws with that verdict; nothing without draws.</summary>
    /// <param name="step">From one set-up to the next.</param>
    public static string Sure(CastStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return double.IsFinite(step.SameShare) ? $"{Trade.Fixed(100.0 * step.SameShare, 0)} %" : "";
    }

    /// <summary>One row per set-up.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    public static string Cases(CastAcross result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Table(writer =>
        {
            for (int i = 0; i < result.Cases.Count; i++)
            {
                CastCase c = result.Cases[i];
                CastStep? step = result.Step(i);
                using SepWriter.Row row = writer.NewRow();
                row["value"].Set(CsvLine.Text(c.Label));
                row["failure"].Set(CsvLine.Text(c.Failure ?? ""));
                Set(row, "guesses_p10_m", c.GuessesM.Low);
                Set(row, "guesses_p90_m", c.GuessesM.High);
                Set(row, "scatter_m", c.SigmaM);
                row["compared_with"].Set(step is null ? "" : CsvLine.Text(result.Reference(i)!.Label));
                Set(row, "gain_m", step?.GainM);
                Set(row, "gain_p10_m", step?.GainsM.Low);
                Set(row, "gain_p90_m", step?.GainsM.High);
                Set(row, "casts_to_see_it", step?.Casts);
                row["verdict"].Set(step is null ? "" : Verdict(step));
                Set(row, "share_of_draws_with_that_verdict", step?.SameShare);
                foreach (Figure<CastResult> key in CastFigures.All)
                {
                    Set(row, key.Key, c.Cast is null ? null : key.Value(c.Cast));
                }
            }
        });
    }

    /// <summary>One row per draw of the guesses, one column per set-up: mean distance, m.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    public static string Draws(CastAcross result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Table(writer =>
        {
            for (int draw = 0; draw < result.Cases[0].DrawsM.Count; draw++)
            {
                using SepWriter.Row row = writer.NewRow();
                row["draw"].Format(draw);
                foreach (CastCase c in result.Cases)
                {
                    Set(row, $"distance_mean_m {c.Label}", c.DrawsM[draw]);
                }
            }
        });
    }

    private static void Set(SepWriter.Row row, string column, double? value)
    {
        if (value is double number && double.IsFinite(number))
        {
            row[column].Format(number);
        }
        else
        {
            row[column].Set("");
        }
    }

    private static string Table(Action<SepWriter> write)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        using (SepWriter writer = Sep.New(',').Writer(o => o with { CultureInfo = CultureInfo.InvariantCulture, Escape = true }).To(text))
        {
            write(writer);
        }

        return text.ToString();
    }
}
