package baysheet.simulate;

import java.util.Random;

/** What happens to a sheet in a workshop and on its way to the scanner. */
enum Dirt {
  SMUDGE {
    @Override
    void on(Sheeted page, Random chance) {
      for (int i = 0; i < 1 + chance.nextInt(4); i++) {
        double x = chance.nextDouble() * page.wide();
        double y = chance.nextDouble() * page.high();
        smudge(page, chance, x, y, 2 + 9 * chance.nextDouble());
      }
    }
  },
  COFFEE {
    @Override
    void on(Sheeted page, Random chance) {
      double cx = chance.nextDouble() * page.wide();
      double cy = chance.nextDouble() * page.high();
      double radius = 34 + 8 * chance.nextDouble();
      double wide = 0.6 + 1.6 * chance.nextDouble();
      double dark = 0.12 + 0.25 * chance.nextDouble();
      double begin = chance.nextDouble() * 6.3;
      double arc = 2 + 4.3 * chance.nextDouble();
      int reach = (int) ((radius + 4) * Sheeted.PIXELS);
      int mx = (int) (cx * Sheeted.PIXELS);
      int my = (int) (cy * Sheeted.PIXELS);
      for (int y = -reach; y <= reach; y++) {
        for (int x = -reach; x <= reach; x++) {
          double angle = (Math.atan2(y, x) + 12.6 - begin) % 6.283;
          double waver = 0.5 * Math.sin(3 * angle) + 0.25 * Math.sin(11 * angle);
          double off = Math.hypot(x, y) / Sheeted.PIXELS - radius - waver;
          double ring = angle < arc && off < wide / 2 && off > -wide ? 1 : 0;
          // Coffee dries from the rim inwards: the outer edge is darkest.
          double rim = ring * (off > wide / 2 - 0.35 ? 1 : 0.6);
          double film = off < 0 ? 0.04 : 0;
          if (rim + film > 0) {
            page.shade(mx + x, my + y, 1 - dark * rim - film);
          }
        }
      }
    }
  },
  FOLD {
    @Override
    void on(Sheeted page, Random chance) {
      boolean level = chance.nextBoolean();
      double at = (level ? page.high() : page.wide()) * (0.3 + 0.4 * chance.nextDouble());
      double tilt = (chance.nextDouble() - 0.5) * 0.02;
      double dark = 0.08 + 0.22 * chance.nextDouble();
      double wide = 0.3 + 0.6 * chance.nextDouble();
      int length = level ? page.width : page.height;
      for (int i = 0; i < length; i++) {
        double middle = (at + tilt * i / Sheeted.PIXELS) * Sheeted.PIXELS;
        int half = (int) (wide * Sheeted.PIXELS);
        for (int j = -half; j <= half; j++) {
          double through = 1 - dark * (1 - Math.abs(j) / (half + 1.0));
          int x = level ? i : (int) middle + j;
          int y = level ? (int) middle + j : i;
          page.shade(x, y, through);
          // Toner cracks off along a fold.
          if (j == 0 && chance.nextInt(3) > 0) {
            page.whiten(x, y);
          }
        }
      }
    }
  },
  HOLES {
    @Override
    void on(Sheeted page, Random chance) {
      double x = 9 + 5 * chance.nextDouble();
      int level = chance.nextBoolean() ? 20 : 190;
      for (double off : new double[] {-40, 40}) {
        page.dot(x, page.high() / 2 + off, 2.75 + 0.25 * chance.nextDouble(), level);
      }
    }
  },
  STAPLE {
    @Override
    void on(Sheeted page, Random chance) {
      double x = 4 + 8 * chance.nextDouble();
      double y = 4 + 8 * chance.nextDouble();
      double angle = chance.nextDouble() * 1.57;
      for (double t = -6; t <= 6; t += 0.1) {
        page.dot(x + t * Math.cos(angle), y - t * Math.sin(angle), 0.25, 60);
      }
    }
  },
  SPECKS {
    @Override
    void on(Sheeted page, Random chance) {
      for (int i = 0; i < 50 + chance.nextInt(250); i++) {
        double x = chance.nextDouble() * page.wide();
        double y = chance.nextDouble() * page.high();
        page.dot(x, y, 0.05 + 0.15 * chance.nextDouble(), 30 + chance.nextInt(120));
      }
    }
  },
  FINGERS {
    @Override
    void on(Sheeted page, Random chance) {
      double x = chance.nextDouble() * page.wide();
      double y = chance.nextDouble() * page.high();
      for (int i = 0; i < 3; i++) {
        smudge(page, chance, x + i * 16, y + 4 * chance.nextDouble(), 5 + 3 * chance.nextDouble());
      }
    }
  };

  abstract void on(Sheeted page, Random chance);

  /** A greasy patch: darkest in the middle, drawn out in one direction, mottled. */
  static void smudge(Sheeted page, Random chance, double x, double y, double size) {
    double angle = chance.nextDouble() * 3.14;
    double flat = 0.25 + 0.6 * chance.nextDouble();
    double dark = 0.1 + 0.45 * chance.nextDouble();
    double phase = chance.nextDouble() * 6;
    int reach = (int) (2 * size * Sheeted.PIXELS);
    for (int dy = -reach; dy <= reach; dy++) {
      for (int dx = -reach; dx <= reach; dx++) {
        double u = (dx * Math.cos(angle) + dy * Math.sin(angle)) / Sheeted.PIXELS / size;
        double v = (dy * Math.cos(angle) - dx * Math.sin(angle)) / Sheeted.PIXELS / size / flat;
        double mottle = 1 + 0.25 * Math.sin(7 * u + phase) * Math.sin(9 * v + phase);
        double shade = dark * Math.exp(-2 * (u * u + v * v)) * mottle;
        if (shade > 0.004) {
          page.shade((int) (x * Sheeted.PIXELS) + dx, (int) (y * Sheeted.PIXELS) + dy, 1 - shade);
        }
      }
    }
  }
}
