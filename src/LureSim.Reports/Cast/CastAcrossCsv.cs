using System.Globalization;
using LureSim.Model;
using LureSim.Model.Cast;
using LureSim.Studies.Cast;
using LureSim.Studies.Sweep;
using nietras.SeparatedValues;

namespace LureSim.Reports.Cast;

/// <summary>A comparison of casts as tables.</summary>
public static class CastAcrossCsv
{
    /// <summary>One row per set-up. Columns that start with as_it_stands are of one run with every guess as it stands.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    public static string Cases(CastAcross result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Table(writer =>
        {
            for (int i = 0; i < result.Cases.Count; i++)
            {
                CastCase c = result.Cases[i];
                CastPair? pair = result.Against(i);
                using SepWriter.Row row = writer.NewRow();
                row["value"].Set(CsvLine.Text(c.Label));
                row["failure"].Set(CsvLine.Text(c.Failure ?? ""));
                row["draws"].Format(c.Draws.Count);
                row["failed_draws"].Format(c.FailedDraws);
                Set(row, "mean_m", result.MeanM(i));
                Set(row, "guesses_p10_m", c.GuessesM.Low);
                Set(row, "guesses_p90_m", c.GuessesM.High);
                Set(row, "scatter_m", c.ScatterM);
                row["compared_with"].Set(CsvLine.Text(pair?.From ?? ""));
                Set(row, "gain_m", pair?.GainM);
                Set(row, "gain_p10_m", pair?.GainsM.Low);
                Set(row, "gain_p90_m", pair?.GainsM.High);
                Set(row, "casts_to_see_it", pair?.Casts);
                row["verdict"].Set(pair is null ? "" : CastAcrossWords.Verdict(pair.Verdict));
                Set(row, "share", pair?.Share);
                foreach (Figure<CastResult> key in CastFigures.All)
                {
                    Set(row, "as_it_stands_" + key.Key, c.Cast is null ? null : key.Value(c.Cast));
                }
            }
        });
    }

    /// <summary>One row for every two set-ups with casts.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    public static string Pairs(CastAcross result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Table(writer =>
        {
            foreach (CastPair pair in result.Pairs())
            {
                using SepWriter.Row row = writer.NewRow();
                row["a"].Set(pair.From);
                row["b"].Set(pair.To);
                Set(row, "gain_m", pair.GainM);
                Set(row, "gain_p10_m", pair.GainsM.Low);
                Set(row, "gain_p90_m", pair.GainsM.High);
                row["verdict"].Set(CastAcrossWords.Verdict(pair.Verdict));
                Set(row, "share", pair.Share);
            }
        });
    }

    /// <summary>One row per draw of the guesses, two columns per set-up: mean distance and scatter from cast to cast, m.</summary>
    /// <param name="result">Casts of several set-ups.</param>
    public static string Draws(CastAcross result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Table(writer =>
        {
            for (int draw = 0; draw < result.Cases[0].Draws.Count; draw++)
            {
                using SepWriter.Row row = writer.NewRow();
                row["draw"].Format(draw);
                foreach (CastCase c in result.Cases)
                {
                    Set(row, $"distance_mean_m {c.Label}", c.Draws[draw].MeanM);
                    Set(row, $"scatter_m {c.Label}", c.Draws[draw].SigmaM);
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
