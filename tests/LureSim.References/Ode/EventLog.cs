namespace LureSim.References.Ode;

/// <summary>Records what the scanner found, applies maps and says when a run must stop.</summary>
internal sealed class EventLog(OdeProblem problem)
{
    private readonly List<EventOccurrence> _occurrences = [];
    private readonly int[] _counts = new int[problem.Events.Count];
    private int _firstAtCut;

    public IReadOnlyList<EventOccurrence> Occurrences => _occurrences;

    /// <summary>True when one of the events of the last cut ends the run.</summary>
    public bool Ends { get; private set; }

    /// <summary>Records crossings up to the first that stops or maps, with all others at that same time.</summary>
    /// <returns>The time of that cut, or NaN.</returns>
    public double Take(ReadOnlySpan<EventScanner.Found> crossings, Stepper stepper)
    {
        double cut = double.NaN;
        for (int i = 0; i < crossings.Length && !(crossings[i].Time > cut); i++)
        {
            EventScanner.Found c = crossings[i];
            OdeEvent e = problem.Events[c.Event];
            if (i == 0 || c.Time > crossings[i - 1].Time)
            {
                _firstAtCut = _occurrences.Count;
            }

            double[] state = new double[problem.System.Dimension];
            stepper.At(c.Time, state);
            _occurrences.Add(new EventOccurrence(c.Event, c.Time, c.Rising, state, state));
            bool ends = ++_counts[c.Event] == e.StopAt;
            Ends |= ends;
            if (ends || e.Map is not null)
            {
                cut = c.Time;
            }
        }

        return cut;
    }

    /// <summary>Applies the maps of the last cut in the order of declaration.</summary>
    public void Map(double t, double[] state)
    {
        for (int i = _firstAtCut; i < _occurrences.Count; i++)
        {
            if (problem.Events[_occurrences[i].Event].Map is { } map)
            {
                map(t, state);
                _occurrences[i] = _occurrences[i] with { After = state.ToArray() };
            }
        }
    }

    /// <summary>Tells the scanner which events stand on their zero after the last cut.</summary>
    public void MarkZeros(EventScanner scanner)
    {
        for (int i = _firstAtCut; i < _occurrences.Count; i++)
        {
            scanner.PutOnZero(_occurrences[i].Event);
        }
    }
}
