using System.CommandLine;
using System.Globalization;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Cadence;

namespace LureSim.Cli.Commands;

/// <summary>Options of <c>cadence</c> that say how it searches.</summary>
public sealed class CadenceOptions
{
    private const int MostStarts = 1000, MostThreads = 4096;

    private readonly Option<string> from = new("--from")
    {
        Description = "Slowest rhythm.",
        HelpName = "rhythm",
        DefaultValueFactory = _ => "0.6 /s",
    };

    private readonly Option<string> to = new("--to")
    {
        Description = "Fastest rhythm.",
        HelpName = "rhythm",
        DefaultValueFactory = _ => "4 /s",
    };

    private readonly Option<string?> starts = new("--starts")
    {
        Description = "Starts per rhythm, so that luck is not reported as a rule; default 6, in a map 3.",
        HelpName = "count",
    };

    private readonly Option<string> threads = new("--threads")
    {
        Description = "Most threads; 0 uses every core. The result does not depend on it.",
        HelpName = "count",
        DefaultValueFactory = _ => "0",
    };

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    public void AddTo(Command command)
    {
        ArgumentNullException.ThrowIfNull(command);
        foreach (Option option in (Option[])[from, to, starts, threads])
        {
            command.Add(option);
        }
    }

    /// <summary>The plan, or null after faults.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="defaultStarts">Starts when none are asked for.</param>
    /// <param name="faults">Gets every fault.</param>
    public CadencePlan? Read(ParseResult parsed, int defaultStarts, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        ArgumentNullException.ThrowIfNull(faults);
        int before = faults.Count;
        double slowest = Rhythm(parsed.GetValue(from)!, "--from", faults), fastest = Rhythm(parsed.GetValue(to)!, "--to", faults);
        int count = Count(parsed.GetValue(starts), defaultStarts, "--starts", 1, MostStarts, faults);
        int cores = Count(parsed.GetValue(threads), 0, "--threads", 0, MostThreads, faults);
        if (fastest <= slowest)
        {
            faults.Add(new("--to", "", "the fastest rhythm must lie above the slowest"));
        }

        return faults.Count > before ? null : new CadencePlan(slowest, fastest, Starts: count, Threads: cores);
    }

    private static double Rhythm(string text, string option, ICollection<ScenarioFault> faults)
    {
        KeySpec key = RetrieveKeys.Cadence;
        QuantityValue value = Quantity.Read(text, key.Kind);
        if (value.Error is not null)
        {
            faults.Add(new(option, "", value.Error));
        }
        else if (value.Si < key.Low || value.Si > key.High)
        {
            faults.Add(new(option, "", $"\"{text}\" is outside of {key.Low.ToString(CultureInfo.InvariantCulture)} to {key.High.ToString(CultureInfo.InvariantCulture)} /s"));
        }

        return value.Si;
    }

    private static int Count(string? text, int otherwise, string option, int least, int most, ICollection<ScenarioFault> faults)
    {
        if (text is null)
        {
            return otherwise;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count >= least && count <= most)
        {
            return count;
        }

        faults.Add(new(option, "", $"\"{text}\" is no count; allowed: {least} to {most}"));
        return otherwise;
    }
}
