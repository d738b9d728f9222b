using LureSim.Model.Assembly;
using LureSim.Model.Cast;
using LureSim.Model.Reels;

namespace LureSim.Model.Tests.Cast;

/// <summary>What the recorder keeps of states that are set by hand.</summary>
public sealed class CastRecorderTests
{
    private static readonly CastParts Parts = new(CastCases.Default().Setup, CastCases.Default().Task);

    [Fact]
    public void The_launch_is_the_fastest_moment_of_a_tenth_of_a_second_from_the_release_on()
    {
        (CastRecorder recorder, AirStep cast) = Start();
        Fly(cast, 30.0, 40.0);
        recorder.Look(cast, double.NaN);
        Assert.Equal(0.0, recorder.LaunchSpeed);
        Fly(cast, 3.0, 4.0);
        recorder.Look(cast, cast.TimeS);
        Fly(cast, 2.0, 1.0);
        recorder.Look(cast, cast.TimeS - 0.05);
        Fly(cast, 30.0, 40.0);
        recorder.Look(cast, cast.TimeS - 0.101);
        Assert.Equal(5.0, recorder.LaunchSpeed, 1e-12);
        Assert.Equal(Math.Atan2(4.0, 3.0), recorder.LaunchAngle, 1e-12);
        Fly(cast, 5.0, -12.0);
        recorder.Look(cast, cast.TimeS - 0.099);
        Assert.Equal(13.0, recorder.LaunchSpeed, 1e-12);
        Assert.Equal(Math.Atan2(-12.0, 5.0), recorder.LaunchAngle, 1e-12);
    }

    [Fact]
    public void The_apex_is_the_highest_place_at_any_time()
    {
        (CastRecorder recorder, AirStep cast) = Start();
        foreach (double z in new[] { 3.0, 7.5, 2.0 })
        {
            cast.Line.Z[0] = z;
            recorder.Look(cast, z > 5.0 ? 0.0 : double.NaN);
        }

        Assert.Equal(7.5, recorder.Apex);
    }

    // Spin and loops count from the release on; the hands' torque by its size and before it.
    [Fact]
    public void Spin_and_loops_count_after_the_release_and_torque_before_it()
    {
        (CastRecorder recorder, AirStep cast) = Start();
        cast.Step(1e-4);
        double torque = cast.Rod.HandTorqueNm;
        Assert.NotEqual(0.0, torque);
        cast.Reel.SpeedMS = 34.0;
        recorder.Look(cast, double.NaN);
        Assert.Equal(Math.Abs(torque), recorder.PeakTorque);
        Assert.Equal((0.0, 0.0), (recorder.PeakSpin, recorder.PeakLoops));
        Assert.Equal(cast.Line.TipTensionN, recorder.PeakTension);

        // After the release the spool counts, and what it gives more than slack line takes: 17 m/s of it for a millisecond are 0.16 loops of 0.1068 m.
        cast.Reel.LetGo(20.0);
        cast.Reel.SpeedMS = 17.0;
        recorder.Look(cast, cast.TimeS);
        Assert.Equal(17.0 / 0.017, recorder.PeakSpin, 1e-3);
        (double x, double z, _, _) = cast.Tip();
        (cast.Line.X[0], cast.Line.Z[0]) = (x, z);
        for (int i = 0; i < 40; i++)
        {
            cast.Step(2.5e-4);
        }

        Assert.True(cast.Reel.LooseM > 1e-3);
        recorder.Look(cast, cast.TimeS);
        Assert.Equal(cast.Reel.LooseM / cast.Reel.LoopM, recorder.PeakLoops, 1e-12);
        Assert.Equal(Math.Abs(torque), recorder.PeakTorque);
    }

    // The tip beyond joint j, turned by 0.2 rad, moves by a chord of 2 sin(0.1) times what lies beyond; its spring stores k 0.02 J.
    [Fact]
    public void The_bend_is_the_way_of_the_tip_from_the_straight_rod_over_its_length()
    {
        (CastRecorder recorder, AirStep cast) = Start();
        Array.Fill(cast.Rod.Q, 0.3, 1, cast.Rod.Q.Length - 1);
        cast.Rod.Q[0] = 0.25;
        recorder.Look(cast, double.NaN);
        Assert.Equal(0.0, recorder.PeakBend, 1e-12);
        const int joint = 3;
        Array.Fill(cast.Rod.Q, 0.5, joint + 2, cast.Rod.Q.Length - joint - 2);
        recorder.Look(cast, double.NaN);
        double beyond = Parts.Chain.LengthM[(joint + 1)..].Sum();
        Assert.Equal(2.0 * Math.Sin(0.1) * beyond / Parts.Chain.FreeLengthM, recorder.PeakBend, 1e-12);
        Assert.Equal(Parts.Chain.SpringNm[joint] * 0.02, recorder.PeakBendJ, 1e-12);

        // Straight again, the peaks stay.
        Array.Fill(cast.Rod.Q, 0.3, 1, cast.Rod.Q.Length - 1);
        recorder.Look(cast, double.NaN);
        Assert.Equal(2.0 * Math.Sin(0.1) * beyond / Parts.Chain.FreeLengthM, recorder.PeakBend, 1e-12);
    }

    // The lure 0.5 m from the resting tip in the direction (3, 4): going that way at 5 m/s draws 5 m/s of line, going across it none.
    [Theory]
    [InlineData(3.0, 4.0, 5.0)]
    [InlineData(4.0, -3.0, 0.0)]
    [InlineData(-3.0, -4.0, -5.0)]
    public void A_row_holds_the_state_as_it_is(double vx, double vz, double rate)
    {
        (CastRecorder recorder, AirStep cast) = Start();
        (double x, double z, _, _) = cast.Tip();
        (cast.Line.X[0], cast.Line.Z[0]) = (x + 0.3, z + 0.4);
        Fly(cast, vx, vz);
        cast.Reel.SpeedMS = 8.5;
        recorder.Look(cast, double.NaN);
        CastSeries s = recorder.Series();
        Assert.Equal([0.0], s.TimeS);
        Assert.Equal([cast.Rod.Q[1]], s.ButtRad);
        Assert.Equal([0.0], s.TipSpeedMS);
        Assert.Equal((x + 0.3, z + 0.4), (s.LureXM[0], s.LureZM[0]));
        Assert.Equal(5.0, s.LureSpeedMS[0], 1e-12);
        Assert.Equal(rate, s.LineSpeedMS[0], 1e-9);
        Assert.Equal((8.5, 0.0, 0.0), (s.SpoolSpeedMS[0], s.TensionN[0], s.LooseM[0]));
        Assert.Equal(Math.PI * 0.034, s.LoopM[0], 1e-9);
        Assert.Equal(500.0, s.SpinRadS[0], 1e-9);
    }

    // 100 ms of swing, looked at each 1 ms: rows each 5 ms, poses each 20 ms, and not one of the flight. Released, the swing's poses go on for a
    // tenth of a second and those of the flight come each tenth. A pose runs from the hand over the tip to the lure.
    [Fact]
    public void Rows_and_poses_come_at_their_intervals()
    {
        (CastRecorder recorder, AirStep cast) = Start();
        recorder.Look(cast, double.NaN);
        Run(recorder, cast, 100, double.NaN);
        CastSeries swing = recorder.Series();
        Assert.InRange(swing.TimeS.Count, 20, 21);
        Assert.InRange(swing.Strobe.Count, 5, 6);
        Assert.Empty(swing.InFlight);
        Run(recorder, cast, 210, cast.TimeS);
        recorder.End(cast);
        CastSeries all = recorder.Series();
        Assert.InRange(all.TimeS.Count, 61, 63);
        Assert.InRange(all.Strobe.Count, 10, 11);
        Assert.InRange(all.Strobe[^1].TimeS, 0.18, 0.2 + 1e-9);
        Assert.Equal(4, all.InFlight.Count);

        // Steps of 1 ms do not add up to the digit.
        foreach ((double due, CastPose pose) in new[] { 0.101, 0.201, 0.301, 0.310 }.Zip(all.InFlight))
        {
            Assert.Equal(due, pose.TimeS, 1.5e-3);
        }

        CastPose last = all.InFlight[^1];
        Assert.Equal(Parts.Chain.LengthM.Length, last.TipIndex);
        Assert.Equal(last.TipIndex + 1 + cast.Line.Count, last.XM.Count);
        (double x, double z, _, _) = cast.Tip();
        Assert.Equal(x, last.XM[last.TipIndex], 1e-12);
        Assert.Equal(z, last.ZM[last.TipIndex], 1e-12);
        Assert.Equal((cast.Rod.Q[0], Parts.HandHeightM), (last.XM[0], last.ZM[0]));
        Assert.Equal((cast.Line.X[0], cast.Line.Z[0]), (last.XM[^1], last.ZM[^1]));
    }

    private static (CastRecorder Recorder, AirStep Cast) Start() => (new CastRecorder(Parts.Chain, 5e-3), Parts.Start(double.PositiveInfinity));

    private static void Fly(AirStep cast, double vx, double vz) => (cast.Line.Vx[0], cast.Line.Vz[0]) = (vx, vz);

    private static void Run(CastRecorder recorder, AirStep cast, int steps, double releasedS)
    {
        for (int i = 0; i < steps; i++)
        {
            cast.Step(1e-3);
            recorder.Look(cast, releasedS);
        }
    }
}
